namespace Byrelaw.Checking.Trouble.Finders;

/// <summary>Rules that nobody can meet of those they apply to, or of those that their list takes; and rules that nobody they apply to can fail.</summary>
internal static class RuleTrouble
{
    public static IEnumerable<TroubleFound> Find(Study study)
    {
        foreach (var rule in study.Rules.Where(rule => !study.Troubled.Contains(rule.Rule.Name)))
        {
            if (Find(study, rule) is { } finding)
            {
                study.Troubled.Add(rule.Rule.Name);
                yield return finding;
            }
        }
    }

    private static TroubleFound? Find(Study study, RuleFormulas rule)
    {
        if (!study.CanBe((rule.Applies, true)))
        {
            return null;
        }

        if (!study.CanBe((rule.Applies, true), (rule.Needs, true)))
        {
            return new TroubleFound(TroubleSort.NeverMet, rule.Rule.Name, null, TroubleProblems.NobodyOfThose(rule.Rule, study.Search.Conflict));
        }

        if (rule.Rule.IfNotKnown != IfNotKnown.Exclude && !study.CanBe((rule.Applies, true), (rule.Needs, false)))
        {
            return new TroubleFound(TroubleSort.AlwaysMet, rule.Rule.Name, null, TroubleProblems.EveryoneOfThose(rule.Rule, study.Search.Conflict));
        }

        foreach (var choice in study.Rulebook.Programme?.Choices ?? [])
        {
            if (rule.Rule.IsFor(choice.List) && Taken(study, choice) is { } taken
                && study.CanBe((taken, true), (rule.Applies, true))
                && !study.CanBe((taken, true), (rule.Applies, true), (rule.Needs, true)))
            {
                return new TroubleFound(TroubleSort.NeverMet, rule.Rule.Name, null, TroubleProblems.NobodyOfTheList(rule.Rule, choice, study.Search.Conflict));
            }
        }

        return null;
    }

    /// <summary>That a list takes an animal; null where it takes any that are female.</summary>
    private static Formula? Taken(Study study, Choice choice) => choice.From switch
    {
        ChoiceFrom.Cows => Sort(study, choice, Audience.Cows),
        ChoiceFrom.Heifers => Sort(study, choice, Audience.Heifers),
        ChoiceFrom.AnotherList => study.Rulebook.Programme!.Choices.FirstOrDefault(other => other.List == choice.OtherList) is { } other ? Taken(study, other) : null,
        _ => null,
    };

    private static Formula Sort(Study study, Choice choice, Audience sort) =>
        study.Maker.Make(sort, null, new SortOfAnimal(sort, $"from {sort.ToString().ToLowerInvariant()}") { Span = choice.Span });
}
