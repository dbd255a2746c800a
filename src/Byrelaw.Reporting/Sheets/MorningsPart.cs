using Byrelaw.Planning.Sheets;

namespace Byrelaw.Reporting.Sheets;

/// <summary>Every morning on which something is done, with its page.</summary>
internal static class MorningsPart
{
    public static Part Of(ImmutableArray<MorningSheet> sheets)
    {
        if (sheets.IsEmpty)
        {
            return Part.None;
        }

        var table = new Table("Mornings, with a preview of each", "morning", "session", "what is done", "animals", "spare", "to ask first");
        foreach (var sheet in sheets)
        {
            var (spare, asked) = sheet switch
            {
                HormoneSheet hormones => (hormones.Spares.Length, hormones.ToAsk.Length),
                TransferSheet transfer => (transfer.Spares.Length, transfer.ToAsk.Length),
                _ => (0, 0),
            };
            table.Add(Wording.Link(Wording.Bold(Dates.WithWeekday(sheet.Date)), SheetWords.Path(sheet) + ".md"), $"{sheet.Session.Number}", SheetWords.What(sheet), $"{sheet.Animals - spare}", $"{spare}", $"{asked}");
        }

        return new DocumentBuilder().Heading(2, "What is done on which morning")
            .Sentence("Each page is a preview: it has no box, and is drawn up again that morning. What is scanned, scored or sampled is put on as few mornings as serve everyone, each early, but not so early that a transfer that slips by a day or two would spoil it.")
            .Table(table).As("mornings");
    }
}
