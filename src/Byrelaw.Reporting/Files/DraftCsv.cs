namespace Byrelaw.Reporting.Files;

/// <summary>The draft list for a spreadsheet or a hand-held in the yards: one line an animal and session, dates ISO 8601. It has no column to write in what was done: it is drawn up for days to come.</summary>
public static class DraftCsv
{
    /// <summary>The file's text.</summary>
    /// <param name="draft">The draft.</param>
    /// <param name="list">The list's name: all its sessions stand in one table.</param>
    public static string Of(Draft draft, string list)
    {
        ArgumentNullException.ThrowIfNull(draft);
        var csv = new StringBuilder(Csv.Record(
            "session", "number", "official identity", "mob", "cow or heifer", "answer", "ready from", "ready until", "rank", "points",
            "reason", "beware", "judged from", "judged to", "records to", "void after"));
        foreach (var judged in draft.Lists.Where(one => one.Choice.List == list))
        {
            Add(csv, new ListReport(draft, judged));
        }

        return csv.ToString();
    }

    private static void Add(StringBuilder csv, ListReport list)
    {
        var choice = list.List.Choice;
        foreach (var animal in list.List.Animals)
        {
            var report = new AnimalReport(list, animal);
            csv.Append(Csv.Record(
                $"{list.List.Session}",
                PlainText.Clean(animal.Number),
                PlainText.Clean(Particulars.OfficialIdentity(report)),
                PlainText.Clean(Particulars.Mob(report)),
                Particulars.Sort(report),
                AnswerWords.Word(animal.Answer, list.Use),
                Iso(animal.ReadyFrom), Iso(animal.ReadyUntil),
                $"{animal.Rank}", Numbers.Of(animal.Score),
                PlainText.Clean(Reason.Of(report)),
                PlainText.Clean(BewareWords.Of(report)),
                Iso(choice.JudgedFrom), Iso(choice.JudgedTo), ReachWords.Iso(list.Herd), Iso(choice.JudgedTo)));
        }
    }

    private static string Iso(LocalDate? date) => date is { } day ? LocalDatePattern.Iso.Format(day) : "";
}
