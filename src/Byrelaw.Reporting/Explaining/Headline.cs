namespace Byrelaw.Reporting.Explaining;

/// <summary>The answer in a line.</summary>
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
}
