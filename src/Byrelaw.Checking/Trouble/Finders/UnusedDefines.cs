namespace Byrelaw.Checking.Trouble.Finders;

/// <summary>Defines that nothing uses. A file of defines is there for other files, so this looks only at a file that has rules of its own, and was asked about.</summary>
internal static class UnusedDefines
{
    public static IEnumerable<TroubleFound> Find(Rulebook rulebook)
    {
        if (rulebook.Files.IsEmpty || !rulebook.Rules.Any(rule => rule.Span.File == rulebook.Files[0]))
        {
            return [];
        }

        if (Wholeness.IsBroken(rulebook))
        {
            // What cannot be read may have used it.
            return [];
        }

        var used = new HashSet<string>(StringComparer.Ordinal);
        var all = Rules(rulebook).SelectMany(rule => new[] { rule.Needs, rule.AppliesTo }).OfType<Condition>()
            .Concat(rulebook.Prefers.Select(prefer => prefer.Condition))
            .Concat(rulebook.Plans.Methods.Select(method => method.Suits).OfType<Condition>())
            .Concat(rulebook.Defines.Select(define => define.Condition));
        foreach (var condition in all)
        {
            used.UnionWith(condition.Named().Select(named => named.Define));
        }

        return rulebook.Defines
            .Where(define => define.Span.File == rulebook.Files[0] && !define.IsBroken && !used.Contains(define.Name))
            .Select(define => new TroubleFound(TroubleSort.NeverUsed, define.Name, null, TroubleProblems.NeverUsed(define)));
    }

    private static IEnumerable<Rule> Rules(Rulebook rulebook) => rulebook.Rules.Concat(rulebook.Drops.Select(drop => drop.Rule));
}
