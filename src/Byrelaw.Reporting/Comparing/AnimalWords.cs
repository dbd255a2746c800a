namespace Byrelaw.Reporting.Comparing;

/// <summary>What each rulebook says of one animal.</summary>
internal static class AnimalWords
{
    /// <summary>The answer by the old rulebook and its one reason.</summary>
    public static (string Answer, string Reason) Old(AnimalDifference animal, HerdComparison herd) => Of(animal.Old, herd.Old, animal.List);

    /// <summary>By the new one.</summary>
    public static (string Answer, string Reason) New(AnimalDifference animal, HerdComparison herd) => Of(animal.New, herd.New, animal.List);

    private static (string Answer, string Reason) Of(AnimalJudgement? judgement, Draft draft, string list)
    {
        if (judgement is null)
        {
            return ("not on the list", "");
        }

        var report = new ListReport(draft, draft.Lists.First(judged => judged.Choice.List == list));
        var points = report.Rulebook.Prefers.Any(prefer => prefer.List == list) ? $" · {Numbers.Of(judgement.Score)} points" : "";
        return (AnswerWords.Both(judgement.Answer), Reason.Of(new AnimalReport(report, judgement)) + Days(judgement, report) + points);
    }

    /// <summary>For one who may be used: from when until when.</summary>
    private static string Days(AnimalJudgement judgement, ListReport report) => (judgement.Answer.MayBeUsed(), judgement.ReadyFrom, judgement.ReadyUntil) switch
    {
        (false, _, _) or (_, null, null) => "",
        (_, { } from, null) => $"; from {report.Short(from)}",
        (_, null, { } until) => $"; until {report.Short(until)}",
        (_, { } from, { } until) => $"; {report.Short(from)} to {report.Short(until)}",
    };
}
