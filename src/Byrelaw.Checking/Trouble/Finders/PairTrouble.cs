namespace Byrelaw.Checking.Trouble.Finders;

/// <summary>Two rules of one list that no animal can meet together, and rules that ask nothing that another does not ask.</summary>
internal static class PairTrouble
{
    // Of a list of more than 300 rules that all have to do with each other, not all pairs are looked at: then less is claimed than could be.
    private const int MostPairs = 50_000;

    public static IEnumerable<TroubleFound> Find(Study study)
    {
        foreach (var list in study.Rules.Where(rule => !study.Troubled.Contains(rule.Rule.Name)).GroupBy(rule => rule.Rule.List))
        {
            foreach (var finding in Find(study, [.. list]))
            {
                yield return finding;
            }
        }
    }

    /// <summary>A rule that has been told of is held against no further ones: what is left shows once that is mended.</summary>
    private static IEnumerable<TroubleFound> Find(Study study, List<RuleFormulas> rules)
    {
        var told = new HashSet<string>(StringComparer.Ordinal);
        var neighbours = new Neighbours(rules);
        var pairs = 0;
        for (var i = 0; i < rules.Count; i++)
        {
            if (told.Contains(rules[i].Rule.Name))
            {
                continue;
            }

            foreach (var j in neighbours.After(i))
            {
                if (told.Contains(rules[i].Rule.Name) || ++pairs > MostPairs)
                {
                    break;
                }

                if (!told.Contains(rules[j].Rule.Name) && Find(study, rules[i], rules[j]) is { } finding)
                {
                    if (!Acceptances.IsAccepted(study.Rulebook, finding))
                    {
                        told.Add(finding.Name);
                    }

                    yield return finding;
                }
            }
        }
    }

    private static TroubleFound? Find(Study study, RuleFormulas first, RuleFormulas second) =>
        NeverTogether(study, first, second)
        ?? Implied(study, by: first, second)
        ?? Implied(study, by: second, first);

    private static TroubleFound? NeverTogether(Study study, RuleFormulas first, RuleFormulas second)
    {
        // What is not known passes, and an animal of whom nothing is known meets any such rule.
        if (first.Rule.IfNotKnown == IfNotKnown.Pass || second.Rule.IfNotKnown == IfNotKnown.Pass)
        {
            return null;
        }

        if (study.CanBe((first.Applies, true), (second.Applies, true), (first.Needs, true), (second.Needs, true)))
        {
            return null;
        }

        var problem = TroubleProblems.NeverTogether(second.Rule, first.Rule, study.Search.Conflict);
        return study.CanBe((first.Applies, true), (second.Applies, true), (first.Needs, true))
            && study.CanBe((first.Applies, true), (second.Applies, true), (second.Needs, true))
            && study.Show.NeverTogether(problem, first, second) is { } shown
            ? new TroubleFound(TroubleSort.NeverMetWith, second.Rule.Name, first.Rule.Name, shown)
            : null;
    }

    private static TroubleFound? Implied(Study study, RuleFormulas by, RuleFormulas rule)
    {
        if (!Implies(study, by, rule))
        {
            return null;
        }

        var problem = TroubleProblems.Implied(rule.Rule, by.Rule, isMutual: Implies(study, rule, by));
        return study.Show.Implied(problem, rule, by) is { } shown ? new TroubleFound(TroubleSort.ImpliedBy, rule.Rule.Name, by.Rule.Name, shown) : null;
    }

    private static bool Implies(Study study, RuleFormulas one, RuleFormulas other) => Implication.Holds(study.CanBe, one, other);
}
