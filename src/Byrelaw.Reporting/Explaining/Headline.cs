namespace Byrelaw.Reporting.Explaining;

/// <summary>The answer in a line and in a sentence.</summary>
public static class Headline
{
    /// <summary>Such as <c>Later: ready from 2 November 2026</c>.</summary>
    public static string Of(AnimalReport report)
    {
        var (list, animal) = (report.On, report.Animal);
        return animal.Answer switch
        {
            Answer.Ready => $"{AnswerWords.Word(Answer.Ready, list.Use)} for {list.Days}",
            Answer.OnCourse => $"{AnswerWords.Word(Answer.OnCourse, list.Use)} for {list.Days}",
            Answer.Later => $"Later: {WhenLater.Of(report, Dates.Long)}",
            Answer.Ask => $"Ask: {Open(report)}",
            _ when ChiefRule.Of(report) is { Gate: Gate.None, Answer: RuleAnswer.NotMet } chief && animal.NeverTogether.IsEmpty =>
                $"No: {RuleWords.Told(chief, list)} ({chief.Name})",
            _ => $"No: {Reason.Of(report)}",
        };
    }

    /// <summary>The answer for which day, in a sentence. The words between asterisks are the answer itself.</summary>
    public static (string Before, string Answer, string After) Sentence(AnimalReport report)
    {
        var (list, animal) = (report.On, report.Animal);
        var on = $"On the list {list.Name}, judged for {list.Days}, ";
        return animal.Answer switch
        {
            Answer.Ready when list.Use == ListUse.ForLookingOnly => (on + "she ", "matches", ReadySpan(report)),
            Answer.OnCourse when list.Use == ListUse.ForLookingOnly => (on + "she ", "will match", $", {ReachWords.IfNothingHappens(list.Herd, Dates.Long)}."),
            Answer.Ready => (on + "she is ", "Ready", ReadySpan(report)),
            Answer.OnCourse => (on + "she is ", "On course", $": Ready {ReachWords.IfNothingHappens(list.Herd, Dates.Long)}."),
            Answer.Later when report.IsTooLate => (on + "the answer is ", "Later", ", and that is too late for this programme."),
            Answer.Later when animal.ReadyFrom is null => (on + "the answer is ", "Later", ": not on those days, and the records do not say whether then."),
            Answer.Later => (on + "the answer is ", "Later", "."),
            Answer.Ask => (on + "the answer is ", "Ask", ": no rule forbids her, and the records do not say whether all hold."),
            _ when animal.ForGood => (on + "the answer is ", "No", report.IsForGoodHere ? $": nothing that can still happen makes her fit for session {list.Session}." : ", for good: nothing that can still happen changes it."),
            _ => (on + "the answer is ", "No", ": time alone does not change it."),
        };
    }

    /// <summary>What is open, without the rule's name, which follows below.</summary>
    private static string Open(AnimalReport report)
    {
        var missing = ChiefRule.Of(report) is { Answer: RuleAnswer.NotKnown } chief ? RuleWords.Missing(chief) : [];
        missing = FirstJob(report) ?? (missing.Count == 0 ? report.Animal.Settle : missing);
        return missing.Count == 0 ? Reason.Of(report) : MissingWords.Brief(Asked.Of(missing)[0], report.On);
    }

    /// <summary>The first way of what must be done for the rule that speaks.</summary>
    private static ImmutableArray<Missing>? FirstJob(AnimalReport report) =>
        ChiefRule.Of(report) is { } chief && report.Jobs.FirstOrDefault(job => job.Rules.Contains(chief.Name)) is { } job ? job.Ways[0] : null;

    private static string ReadySpan(AnimalReport report) => (report.Animal.ReadyFrom, report.Animal.ReadyUntil) switch
    {
        ({ } from, { } until) => $": from {report.On.Long(from)} until {report.On.Long(until)}.",
        (_, { } until) => $" until {report.On.Long(until)}.",
        _ => ".",
    };
}
