namespace Byrelaw.Checking.Trouble.Finders;

/// <summary>Conditions that are never true, or never false, of any animal. The innermost one is told, and nothing around it.</summary>
internal static class ConditionTrouble
{
    public static IEnumerable<TroubleFound> Find(Study study)
    {
        foreach (var define in study.Rulebook.Defines.Where(define => !define.IsBroken))
        {
            foreach (var finding in Find(study, define.Name, define.Condition))
            {
                yield return finding;
            }
        }

        foreach (var rule in study.Rules)
        {
            foreach (var finding in Find(study, rule.Rule.Name, rule.Rule.Needs, rule.Rule.IfNotKnown))
            {
                yield return finding;
            }
        }

        foreach (var prefer in study.Rulebook.Prefers.Where(prefer => !prefer.IsBroken))
        {
            foreach (var finding in Find(study, prefer.Name, prefer.Condition))
            {
                yield return finding;
            }
        }
    }

    private static List<TroubleFound> Find(Study study, string name, Condition condition, IfNotKnown ifNotKnown = IfNotKnown.Ask)
    {
        var findings = new List<TroubleFound>();
        if (condition is ListCondition list)
        {
            findings.AddRange(list.Items.SelectMany(item => Find(study, name, item, ifNotKnown)));
            if (findings.Count > 0 || list.Items.Any(item => IsTroubled(study, item)))
            {
                study.Troubled.Add(name);
                return findings;
            }
        }
        else if (IsTroubled(study, condition))
        {
            study.Troubled.Add(name);
            return findings;
        }

        if (TroubleOf(study, name, condition, ifNotKnown) is { } finding)
        {
            study.Troubled.Add(name);
            findings.Add(finding);
        }

        return findings;
    }

    private static bool IsTroubled(Study study, Condition condition) => condition is NamedCondition named && study.Troubled.Contains(named.Define);

    private static TroubleFound? TroubleOf(Study study, string name, Condition condition, IfNotKnown ifNotKnown)
    {
        // A defined name is looked at where it is defined.
        if (condition is NamedCondition)
        {
            return null;
        }

        if (study.Maker.Reach(condition) is { } reach && !study.CanBe((reach, true)))
        {
            return new TroubleFound(TroubleSort.OutOfReach, name, null, TroubleProblems.OutOfReach(condition));
        }

        var formula = study.Maker.Make(condition);
        if (!study.CanBe((formula, true)))
        {
            var problem = TroubleProblems.NeverTrue(condition.Span, study.Search.Conflict);
            return (condition is ListCondition list ? study.Show.NeverMet(problem, list) : problem) is { } shown
                ? new TroubleFound(TroubleSort.NeverMet, name, null, shown)
                : null;
        }

        // With `if not known exclude` it keeps out those of whom nothing is known, and that may be all it is for.
        return ifNotKnown == IfNotKnown.Exclude || study.CanBe((formula, false)) ? null
            : new TroubleFound(TroubleSort.AlwaysMet, name, null, TroubleProblems.NeverFalse(condition.Span));
    }
}
