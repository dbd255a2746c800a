namespace Byrelaw.Workshop.Comparing;

/// <summary>Which rules and preferences speak of a define, through however many others.</summary>
internal static class UsersOf
{
    public static IEnumerable<string> Define(Pair<Define> define, Pairs pairs, Rulebook old, Rulebook @new) =>
        (define.Old is { } before ? In(old, before).Select(pairs.RuleNow) : []).Concat(define.New is { } now ? In(@new, now) : []).Distinct();

    private static IEnumerable<string> In(Rulebook rulebook, Define define)
    {
        var users = new HashSet<string> { define.Name };
        foreach (var other in rulebook.Defines.Where(other => Speaks(other.Condition, users)))
        {
            // Each define comes after those it uses, so one walk finds all.
            users.Add(other.Name);
        }

        return rulebook.Rules.Where(rule => Speaks(rule.Needs, users) || (rule.AppliesTo is { } named && users.Contains(named.Define))).Select(rule => rule.Name)
            .Concat(rulebook.Prefers.Where(prefer => Speaks(prefer.Condition, users)).Select(prefer => prefer.Name));
    }

    private static bool Speaks(Condition condition, HashSet<string> of) => condition.Named().Any(named => of.Contains(named.Define));
}
