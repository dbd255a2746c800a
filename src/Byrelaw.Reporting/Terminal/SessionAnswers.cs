namespace Byrelaw.Reporting.Terminal;

/// <summary>One animal's answer in each of a programme's sessions, a line for each list.</summary>
public static class SessionAnswers
{
    /// <summary>The lines; empty for a programme of one session.</summary>
    /// <param name="drafts">Hers, one a session.</param>
    /// <param name="ink">How text is set off.</param>
    public static string Of(IReadOnlyList<Draft> drafts, Ink ink)
    {
        ArgumentNullException.ThrowIfNull(drafts);
        if (drafts.Count < 2)
        {
            return "";
        }

        var table = new Table("In each session", ["list", .. Enumerable.Range(1, drafts.Count).Select(session => (Column)$"session {session}")]);
        foreach (var list in drafts[0].Lists)
        {
            table.Add([(Wording)Phrases.Sentence(list.Choice.List), .. drafts.Select(draft => Cell(draft, list.Choice.List))]);
        }

        return new DocumentBuilder().Gap().Heading(2, "In each session").In(1).Table(table)
            .Sentence(Wording.Faint("--session N explains the answer of one of them")).OnTerminal(ink);
    }

    private static Wording Cell(Draft draft, string list)
    {
        var judged = draft.Lists.First(one => one.Choice.List == list);
        var report = new ListReport(draft, judged);
        return $"{AnswerWords.Both(judged.Animals[0].Answer, judged.Choice.Use)}, {report.Days}";
    }
}
