using Byrelaw.Planning.Pairing;

namespace Byrelaw.Reporting.Sheets;

/// <summary>A run sheet as the rows that <c>record</c> reads: what is found of her ovaries, whether she got an embryo and which, the side, by whom, which straw was read and by whom it was read back. The embryo stands there already.</summary>
internal static class RunSheetCsv
{
    // The session has a column of its own.
    private const string Session = "session";

    /// <summary>The rows, headings first.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="number">What stands under <c>sheet</c>; empty to work out the number itself.</param>
    public static IEnumerable<string[]> Rows(RunSheet sheet, string number)
    {
        var columns = Columns(sheet.Day.Draft.Rulebook.Vocabulary).ToList();
        yield return ["sheet", "row", "date", "session", "animal", "done", .. columns.Select(column => column.Detail is { } detail ? $"{column.Kind.Name}: {detail.Name}" : column.Kind.Name), "reason", "note"];
        foreach (var row in sheet.Rows)
        {
            yield return
            [
                number, $"{row.Row}", LocalDatePattern.Iso.Format(sheet.Day.Day), $"{sheet.Day.Session.Number}", row.Number, "",
                .. columns.Select(column => column is { Kind: EventKind, Detail: { } detail } && NameFolding.Fold(detail.Name) == "embryo" ? row.Embryo ?? "" : ""),
                "", row.TakenOff is null ? "" : "taken off",
            ];
        }
    }

    private static IEnumerable<(Kind Kind, EntryDetail? Detail)> Columns(Vocabulary vocabulary)
    {
        foreach (var kind in new Kind?[] { vocabulary.FindKind("ovary check") as TestKind, RunSheet.Transfer(vocabulary) }.OfType<Kind>())
        {
            yield return (kind, null);
            foreach (var detail in kind.Details.Where(detail => NameFolding.Fold(detail.Name) != Session))
            {
                yield return (kind, detail);
            }
        }
    }
}
