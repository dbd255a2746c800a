namespace Byrelaw.Reporting.Lists;

/// <summary>How many animals a rule keeps from being Ready.</summary>
/// <param name="Rule">The rule or gate.</param>
/// <param name="Alone">Animals that nothing else keeps back.</param>
/// <param name="InAll">Animals that it keeps back, alone or with others.</param>
public sealed record KeepsBack(string Rule, int Alone, int InAll)
{
    /// <summary>The rules that keep any back, the worst first.</summary>
    public static IReadOnlyList<KeepsBack> Of(ListReport list)
    {
        var counts = new Dictionary<string, (int Alone, int InAll)>(StringComparer.Ordinal);
        foreach (var animal in list.List.Animals)
        {
            var inTheWay = animal.Rules.Where(rule => rule.InTheWay).Select(rule => rule.Name).ToList();
            foreach (var rule in inTheWay)
            {
                var (alone, inAll) = counts.GetValueOrDefault(rule);
                counts[rule] = (alone + (inTheWay.Count == 1 ? 1 : 0), inAll + 1);
            }
        }

        return [.. counts.Select(count => new KeepsBack(count.Key, count.Value.Alone, count.Value.InAll))
            .OrderByDescending(rule => rule.Alone).ThenByDescending(rule => rule.InAll).ThenBy(rule => rule.Rule, StringComparer.Ordinal)];
    }
}
