namespace Byrelaw.Records.Entering;

/// <summary>
/// What a file of somebody's own was taken to write under headings that nobody knows, and does not any more since it was mended: the column was taken out, or got its right name. Where it
/// may have become another kind's column, it counts only in rows that say something there.
/// </summary>
internal static class ColumnsTakenOut
{
    /// <summary>The rows of the ledger, each with what falls away.</summary>
    /// <param name="filled">As mended, with the sheet's number: every heading of it is known.</param>
    /// <param name="sheet">As the ledger has it.</param>
    /// <param name="vocabulary">The words.</param>
    public static IEnumerable<SheetRow> Of(FilledSheet filled, Sheet sheet, Vocabulary vocabulary)
    {
        var known = sheet.Rows.SelectMany(row => row.Writes).Select(entry => vocabulary.FindKind(entry.Kind)?.Id).ToHashSet();
        var others = SheetColumns.Of(filled.Table, vocabulary, []).Kinds.FindAll(kind => !known.Contains(kind.Kind.Id));
        foreach (var row in filled.Table.Rows)
        {
            if (others.TrueForAll(kind => FilledSheet.Cell(row, kind.Column).Length > 0) && int.TryParse(FilledSheet.Cell(row, filled.Table.Find("row")), NumberStyles.None, CultureInfo.InvariantCulture, out var number)
                && sheet.Rows.FirstOrDefault(one => one.Row == number) is { } stands)
            {
                yield return stands with { Writes = [.. stands.Writes.Where(entry => vocabulary.FindKind(entry.Kind) is null)] };
            }
        }
    }
}
