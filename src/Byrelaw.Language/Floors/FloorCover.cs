using Byrelaw.Language.Reasoning;

namespace Byrelaw.Language.Floors;

/// <summary>Which rules of the floor a list's own safety rules are proved to ask too: those need not be printed again.</summary>
public sealed class FloorCover
{
    private readonly Dictionary<string, ImmutableArray<string>> _by = new(StringComparer.Ordinal);

    /// <summary>Looks at one list.</summary>
    /// <param name="rulebook">As read.</param>
    /// <param name="list">Its name.</param>
    public FloorCover(Rulebook rulebook, string list)
    {
        ArgumentNullException.ThrowIfNull(rulebook);
        var maker = new FormulaMaker(rulebook, isShared: true);
        var search = new Search(maker.Quantities, isShared: true);
        var own = rulebook.Rules.Where(rule => rule.IsFor(list) && rule is { IsSafety: true, IsBroken: false }).Select(rule => RuleFormulas.Of(rule, maker)).ToList();
        foreach (var rule in rulebook.Floor)
        {
            var floor = RuleFormulas.Of(rule, maker);
            _by[rule.Name] = [.. own.Where(one => Implication.Holds(search.CanBe, one, floor)).Select(one => one.Rule.Name)];
        }
    }

    /// <summary>Whether a rule is one of the floor's, or asks all that one of them asks.</summary>
    public bool Covers(Rule rule)
    {
        ArgumentNullException.ThrowIfNull(rule);
        return rule.IsOfTheFloor || _by.Values.Any(rules => rules.Contains(rule.Name));
    }

    /// <summary>The safety rules of the list that each by itself ask all that a rule of the floor asks; none where it stands in.</summary>
    public ImmutableArray<string> Of(Rule floor)
    {
        ArgumentNullException.ThrowIfNull(floor);
        return _by.TryGetValue(floor.Name, out var rules) ? rules : [];
    }
}
