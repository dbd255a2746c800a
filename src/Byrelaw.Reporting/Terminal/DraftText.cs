namespace Byrelaw.Reporting.Terminal;

/// <summary>What a draft came to, for a terminal.</summary>
public static class DraftText
{
    private const int TasksShown = 3;

    /// <summary>A paragraph a list, with line ends LF.</summary>
    public static string Of(Draft draft, Ink ink)
    {
        var text = new DocumentBuilder();
        if (draft.Rulebook.Programme is { } programme)
        {
            var known = draft.KnownOn is { } day ? $" · as known on {Dates.Long(day)}" : "";
            text.Sentence($"{Wording.Bold(programme.Name)} · {ReachWords.Of(draft.Herd)}{known}").Gap();
        }

        foreach (var list in draft.Lists.Select(judged => new ListReport(draft, judged)))
        {
            var counts = string.Join(" · ", AnswerWords.All.Select(answer => $"{list.List.Count(answer)} {AnswerWords.Both(answer, list.Use)}"));
            text.In(0).Heading(2, list.Title).In(1)
                .Sentence(list.UseSentence)
                .Sentence(PlannedWords.Of(list))
                .Sentence(DangerLine.Of(draft, list.List))
                .Sentence($"{Numbers.Count(list.List.Animals.Length, "animal", "animals")} judged: {counts}")
                .Sentence($"May be used: {AtBest.Of(list.List)}.")
                .Sentence(BothChecks.Of(list)?.InAll() ?? "")
                .Bullets(DoubtLines.Short(list.Herd))
                .Bullets(DoNext.Of(list).Take(TasksShown)).Gap();
        }

        return text.OnTerminal(ink);
    }
}
