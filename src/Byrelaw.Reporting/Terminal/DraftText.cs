namespace Byrelaw.Reporting.Terminal;

/// <summary>What a draft came to, for a terminal.</summary>
public static class DraftText
{
    private const int TasksShown = 3;

    /// <summary>A paragraph a list, with line ends LF.</summary>
    public static string Of(Draft draft, Ink ink)
    {
        var text = new StringBuilder();
        if (draft.Rulebook.Programme is { } programme)
        {
            text.Append(ink.Bold(PlainText.Clean(programme.Name))).Append(" · ").Append(ReachWords.Of(draft.Herd))
                .Append(draft.KnownOn is { } day ? $" · as known on {Dates.Long(day)}" : "").Append("\n\n");
        }

        foreach (var list in draft.Lists.Select(judged => new ListReport(draft, judged)))
        {
            text.Append(ink.Bold(PlainText.Clean(list.Title))).Append('\n');
            text.Append("  ").Append(Numbers.Count(list.List.Animals.Length, "animal", "animals")).Append(" judged: ")
                .AppendJoin(" · ", AnswerWords.All.Select(answer => $"{list.List.Count(answer)} {AnswerWords.Both(answer)}")).Append('\n');
            foreach (var task in DoNext.Of(list).Take(TasksShown))
            {
                text.Append("  - ").Append(PlainText.Clean(task)).Append('\n');
            }

            text.Append('\n');
        }

        return text.ToString();
    }
}
