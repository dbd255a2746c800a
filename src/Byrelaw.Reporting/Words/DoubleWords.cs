namespace Byrelaw.Reporting.Words;

/// <summary>Animals that may be one under two numbers.</summary>
internal static class DoubleWords
{
    private const int PairsNamed = 4;

    /// <summary>All of them as one doubt.</summary>
    public static SaidDoubt Of(TwoNumbers doubt, Herd herd)
    {
        var (one, other) = (herd.Numbers[doubt.Pairs[0].First], herd.Numbers[doubt.Pairs[0].Second]);
        return new SaidDoubt("two_numbers", Lead(doubt.Pairs, herd),
            $"What happened to one may have happened to {(doubt.Pairs.Length == 1 ? "the other" : "its other")}.",
            $"Read both tags, and write below “records”: same animal \"{one}\", \"{other}\"; or: not the same animal \"{one}\", \"{other}\".")
        {
            NamesThem = true,
            Rows = [.. doubt.Pairs.SelectMany(pair => new[] { pair.First, pair.Second }).Distinct().Select(animal => DoubtRow.Of(animal, Day.Start, 0, herd))],
        };
    }

    private static string Lead(ImmutableArray<DoubleNumbers> pairs, Herd herd)
    {
        var parts = pairs.GroupBy(pair => pair.Why).OrderBy(group => group.Key).Select(group => Times(group.Count()) + group.Key switch
        {
            Likeness.Identity => "two numbers have one official identity",
            Likeness.Number => "two numbers look alike",
            _ => "two numbers are said to be one animal’s, and sex or birth speaks against it",
        });
        var named = pairs.Select(pair => $"{herd.Numbers[pair.First]} and {herd.Numbers[pair.Second]}").ToList();
        return $"{Phrases.Sentence(string.Join("; ", parts))}: {Phrases.FirstOf(named, PairsNamed)}";
    }

    private static string Times(int count) => count == 1 ? "" : string.Create(CultureInfo.InvariantCulture, $"{count} times ");
}
