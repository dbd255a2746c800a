namespace Byrelaw.Language.Binding.Farm;

/// <summary>Finds dates that rules of a chosen list speak of and the programme does not set.</summary>
internal static class DatesInRules
{
    /// <summary>Tells each such date once, at the programme's first line.</summary>
    public static void Check(Programme programme, IEnumerable<RuleEntry> rules, IReadOnlyList<DefineEntry> defines, List<Diagnostic> problems)
    {
        var chosen = programme.Choices.Select(choice => choice.List).ToHashSet();
        var told = new HashSet<string>();
        foreach (var entry in rules.Where(entry => entry.Drop is null && chosen.Contains(entry.List)))
        {
            var conditions = entry.Rule is { } rule ? [rule.Needs, rule.AppliesTo] : new Condition?[] { entry.Prefer!.Condition };
            foreach (var date in conditions.OfType<Condition>().SelectMany(condition => Dates(condition, defines, [])))
            {
                if (date is { Name: { } name, Value: null } && told.Add(name))
                {
                    problems.Add(FarmProblems.DateNeeded(programme.Span, name, entry.Name, entry.Span));
                }
            }
        }
    }

    // Defines are read once each, and are no more than 64 deep: a broken chain or circle is not entered.
    private static IEnumerable<DateReference> Dates(Condition condition, IReadOnlyList<DefineEntry> defines, HashSet<int> read) => condition switch
    {
        ListCondition list => list.Items.SelectMany(item => Dates(item, defines, read)),
        NamedCondition named when named.Index >= 0 && !defines[named.Index].IsBroken && read.Add(named.Index) => Dates(defines[named.Index].Condition!, defines, read),
        _ => ConditionWindows.Of(condition).Select(window => window switch
        {
            BeforeDate before => before.Date,
            SinceDate since => since.Date,
            _ => null,
        }).OfType<DateReference>(),
    };
}
