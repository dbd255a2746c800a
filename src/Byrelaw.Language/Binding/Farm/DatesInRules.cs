namespace Byrelaw.Language.Binding.Farm;

/// <summary>Finds dates that rules of a chosen list speak of and the programme does not set.</summary>
internal static class DatesInRules
{
    /// <summary>Tells each such date once, at the programme's first line.</summary>
    public static void Check(Programme programme, IEnumerable<RuleEntry> rules, IReadOnlyList<DefineEntry> defines, List<Diagnostic> problems)
    {
        var chosen = programme.Choices.Select(choice => choice.List).Append(Rule.EveryList).ToHashSet();
        var told = new HashSet<string>();
        foreach (var entry in rules.Where(entry => entry.Drop is null && chosen.Contains(entry.List)))
        {
            var conditions = entry.Rule is { } rule ? [rule.Needs, rule.AppliesTo] : new Condition?[] { entry.Prefer!.Condition };
            foreach (var date in conditions.OfType<Condition>().SelectMany(condition => Dates(condition, defines)))
            {
                if (date is { Name: { } name, Value: null } && told.Add(name))
                {
                    problems.Add(FarmProblems.DateNeeded(programme.Span, name, entry.Name, entry.Span));
                }
            }
        }
    }

    // A broken chain or circle of defines is not entered.
    private static IEnumerable<DateReference> Dates(Condition condition, IReadOnlyList<DefineEntry> defines) =>
        condition.Leaves(index => defines[index].IsBroken ? null : defines[index].Condition).SelectMany(leaf => new ConditionParts(leaf).Dates);
}
