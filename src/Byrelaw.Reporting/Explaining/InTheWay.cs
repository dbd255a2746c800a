using Byrelaw.Judging.Verdicts;
using Byrelaw.Reporting.Words;

namespace Byrelaw.Reporting.Explaining;

/// <summary>One rule that stands between an animal and Ready: what it asks for, what was found and when that changes.</summary>
/// <param name="Rule">Its name.</param>
/// <param name="Sentences">The rest.</param>
public sealed record InTheWay(string Rule, string Sentences)
{
    /// <summary>The rules in the way, the chief one first.</summary>
    public static IReadOnlyList<InTheWay> Of(AnimalReport report)
    {
        var chief = ChiefRule.Of(report);
        return [.. report.InTheWay.OrderBy(rule => ReferenceEquals(rule, chief) ? 0 : 1).Select(rule => Tell(rule, report.On))];
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
        var found = $"For {day}: {RuleWords.Found(rule, list)}{(records.Length == 0 ? "" : $"; {records}")}. ";
        return new InTheWay(rule.Name, (asks + found + Then(rule, list)).TrimEnd());
    }

    private static string Then(RuleJudgement rule, ListReport list)
    {
        switch (rule.Answer)
        {
            case RuleAnswer.NotKnown:
                var missing = RuleWords.Missing(rule);
                return missing.Count == 0 ? "" : $"Missing: {Phrases.And([.. missing.Select(one => MissingWords.Of(one, list))])}.";
            case RuleAnswer.NotMet when rule.TurnsOn is { } turns:
                return $"It holds from {list.Long(turns)}.";
            default:
                var remedies = RuleWords.Remedies(rule, list);
                return remedies.Length == 0 ? "" : $"What would change it: {remedies}.";
        }
    }
}
