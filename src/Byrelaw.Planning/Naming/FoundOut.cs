using Byrelaw.Planning.LeadTimes;

namespace Byrelaw.Planning.Naming;

/// <summary>Whether what is not known of an animal can still be found out by a day: dated within the days that its rule looks at, its result in hand.</summary>
internal static class FoundOut
{
    /// <summary>Of a whole answer: of each rule that is not known something can.</summary>
    public static bool InTime(AnimalJudgement animal, LocalDate today, LocalDate by, string list, ImmutableArray<PlanTask> tasks) => animal.Rules
        .Where(rule => rule.InTheWay)
        .All(rule => rule.Answer == RuleAnswer.NotKnown && (rule.Gate != Gate.None
            || InTime(rule.Findings.Where(finding => finding.Decides).SelectMany(finding => finding.Missing), today, by, list, tasks)));

    /// <summary>Of several ways one is open.</summary>
    public static bool InTime(IEnumerable<Missing> ways, LocalDate today, LocalDate by, string list, ImmutableArray<PlanTask> tasks) =>
        ways.Any(missing => IsOpen(missing, today, by, list, tasks));

    private static bool IsOpen(Missing missing, LocalDate today, LocalDate by, string list, ImmutableArray<PlanTask> tasks)
    {
        var first = missing.From is { } from && IsTaken(missing) && from > today ? from : today;
        return missing.Reason != MissingReason.HerdValuesMissing && LastUsefulDay.Of(missing, by, list, tasks) >= first;
    }

    /// <summary>A result has to be taken on a day that counts; all else is looked up, or mended.</summary>
    private static bool IsTaken(Missing missing) => missing.Reason is MissingReason.NoResult or MissingReason.ResultTooVague or MissingReason.TooFewOfTheMob;
}
