namespace Byrelaw.Reporting.Explaining;

/// <summary>One rule that stands between an animal and Ready: what it asks for, what was found and when that changes.</summary>
/// <param name="Rule">Its name.</param>
/// <param name="Sentences">The rest.</param>
public sealed record InTheWay(string Rule, string Sentences)
{
    private const int AtMost = 2;

    /// <summary>The rules that force the answer, the chief one first; not more than a reader takes in, for the table has them all.</summary>
    public static IReadOnlyList<InTheWay> Of(AnimalReport report) => [.. Ordered(report).Take(AtMost).Select(rule => Tell(rule, report.On))];

    /// <summary>The names of the rest.</summary>
    public static IReadOnlyList<string> Others(AnimalReport report) => [.. Ordered(report).Skip(AtMost).Select(rule => rule.Name)];

    /// <summary>For a No, what is not met before what is not known; the chief rule before all.</summary>
    private static IEnumerable<RuleJudgement> Ordered(AnimalReport report)
    {
        var chief = ChiefRule.Of(report);
        return report.IsGone && chief is not null ? [chief]
            : report.InTheWay.OrderBy(rule => ReferenceEquals(rule, chief) ? 0 : rule.Answer == chief?.Answer ? 1 : 2);
    }

    private static InTheWay Tell(RuleJudgement rule, ListReport list)
    {
        if (rule.Answer == RuleAnswer.Broken)
        {
            return new InTheWay(rule.Name, "A line of this rule cannot be read, and a broken rule lets no animal through. Mend the rule file.");
        }

        var records = RuleWords.Records(rule, list);
        var day = list.Long(RuleWords.DecidingDay(rule, list));
        var asks = rule.Rule is null ? "" : $"It asks for: {RuleWords.Needed(rule)}. ";
        var found = $"For {day}{(rule.FoundOn is null ? "" : ", to which the records reach")}: {RuleWords.FoundThen(rule, list)}{(records.Length == 0 ? "" : $"; {records}")}. ";
        return new InTheWay(rule.Name, (asks + found + Then(rule, list)).TrimEnd());
    }

    private static string Then(RuleJudgement rule, ListReport list)
    {
        switch (rule.Answer)
        {
            case RuleAnswer.NotKnown:
                var missing = RuleWords.Missing(rule);
                return missing.Count == 0 ? "" : $"Missing: {MissingWords.AllOf(missing, list)}.";
            case RuleAnswer.NotMet when rule.TurnsOn is { } turns:
                return $"It holds from {list.Long(turns)}.";
            default:
                var remedies = RuleWords.Remedies(rule, list);
                return remedies.Length == 0 ? "" : $"What would change it: {remedies}.";
        }
    }
}
