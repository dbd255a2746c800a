namespace Byrelaw.Workshop.Tuning;

/// <summary>What a change of a number moves.</summary>
public static class MovedBy
{
    /// <summary>The rules: for a number in the rule itself that rule; for one in a define every rule that speaks of it, through
    /// however many others.</summary>
    public static IEnumerable<Rule> Rules(Rulebook rulebook, RuleNumber number)
    {
        ArgumentNullException.ThrowIfNull(rulebook);
        ArgumentNullException.ThrowIfNull(number);
        if (number.Define is not { } define)
        {
            return rulebook.Rules.Where(rule => rule.Name == number.Rule.Name);
        }

        var moved = Defines(rulebook, define);
        return rulebook.Rules.Where(rule => Speaks(rule.Needs, moved) || (rule.AppliesTo is { } named && moved.Contains(named.Index)));
    }

    /// <summary>The preferences that speak of the define a number stands in.</summary>
    public static IEnumerable<Prefer> Prefers(Rulebook rulebook, RuleNumber number)
    {
        ArgumentNullException.ThrowIfNull(rulebook);
        ArgumentNullException.ThrowIfNull(number);
        return number.Define is { } define ? rulebook.Prefers.Where(prefer => Speaks(prefer.Condition, Defines(rulebook, define))) : [];
    }

    /// <summary>A define and those that speak of it, by place.</summary>
    internal static HashSet<int> Defines(Rulebook rulebook, int define)
    {
        // Each define comes after those it uses, so one walk finds all.
        var moved = new HashSet<int> { define };
        for (var place = define + 1; place < rulebook.Defines.Length; place++)
        {
            if (Speaks(rulebook.Defines[place].Condition, moved))
            {
                moved.Add(place);
            }
        }

        return moved;
    }

    /// <summary>Whether a condition names one of some defines.</summary>
    internal static bool Speaks(Condition condition, IReadOnlySet<int> of) => condition.Named().Any(named => of.Contains(named.Index));
}
