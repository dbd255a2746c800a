namespace Byrelaw.Records.Problems;

/// <summary>What can be wrong with a row before anyone asks what its cells say.</summary>
internal static class RowProblems
{
    /// <summary>The first thing that is wrong with a row that was passed over.</summary>
    public static Diagnostic Of(RowText row, int cellCount)
    {
        for (var cell = 0; cell < row.Cells.Count; cell++)
        {
            switch (row.Cells[cell].Flaw)
            {
                case CellFlaw.QuoteInside:
                    return QuoteInside(row, cell);
                case CellFlaw.TextAfterQuote:
                    return TextAfterQuote(row, cell);
                case CellFlaw.NeverClosed:
                    return NeverClosed(row, cell);
                case CellFlaw.NotUtf8:
                    return NotUtf8(row, cell);
                case CellFlaw.Nul:
                    return Nul(row, cell);
                default:
                    break;
            }
        }

        return row.Cells.Count < cellCount ? TooFewCells(row, cellCount) : TooManyCells(row, cellCount);
    }

    private static Diagnostic NotUtf8(RowText row, int cell) => row.Problem(
        cell, "R0111", Severity.Error,
        "a letter that cannot be read, because it is not saved in UTF-8", "expected a file in UTF-8",
        "save the file again as \"CSV UTF-8\"");

    private static Diagnostic Nul(RowText row, int cell) => row.Problem(
        cell, "R0112", Severity.Error,
        "a sign that no text has (NUL)", "expected text", "the file may be damaged: export it again");

    private static Diagnostic QuoteInside(RowText row, int cell) => row.Problem(
        cell, "R0113", Severity.Error,
        "a quotation mark inside a cell", "expected the whole cell in quotation marks",
        $"write `{Quoted(row.Cells[cell].Value)}`, or leave the quotation marks out");

    private static Diagnostic TextAfterQuote(RowText row, int cell)
    {
        var written = row.Text.Substring(row.Cells[cell].Start, row.Cells[cell].Length).TrimEnd();
        var isOnlyBlank = CellSplitter.Split(written) is [{ Flaw: CellFlaw.None }];
        return row.Problem(
            cell, "R0114", Severity.Error,
            isOnlyBlank ? "a blank after a closing quotation mark" : "text after a closing quotation mark", "expected a comma or the end of the line",
            isOnlyBlank ? "remove the blank" : $"write `{Quoted(written)}`, or leave the quotation marks out");
    }

    private static Diagnostic NeverClosed(RowText row, int cell) => row.Problem(
        cell, "R0115", Severity.Error,
        "a quotation mark that is never closed, or only after what may be further rows", "expected a closing quotation mark",
        "close it, or leave it out; a remark may go over several lines, but no line of it may look like a row");

    private static Diagnostic TooFewCells(RowText row, int cellCount) => row.Problem(
        row.Cells.Count, "R0116", Severity.Error,
        Cells(row.Cells.Count), $"expected {cellCount}, one for each column of the heading",
        $"blank cells need their commas too: {(cellCount - row.Cells.Count == 1 ? "1 is" : $"{cellCount - row.Cells.Count} are")} missing");

    /// <summary>A last row that is short and has no line end.</summary>
    public static Diagnostic FileBreaksOff(RowText row, int cellCount) => row.Problem(
        row.Cells.Count, "R0118", Severity.Error,
        $"the file breaks off in this row, after {CountOf(row.Cells.Count)}", $"expected {cellCount}, and the end of a line",
        "what stood below is not known of anybody: export the file again");

    /// <summary>A last row that has all its cells and no line end.</summary>
    public static Diagnostic LastCellCut(RowText row, int cell) => row.Problem(
        cell, "R0110", Severity.Warning,
        "the file ends here without a line end, and nobody can tell whether all of this cell is there", "expected the end of a line",
        "look at the row; if it is whole, end it with the Enter key and save the file");

    /// <summary>A row with so many cells that a second one must be in it.</summary>
    public static Diagnostic TwoInOne(RowText row, int cellCount) => row.Problem(
        cellCount, "R0119", Severity.Error,
        $"two rows seem to stand in this one: it has {CountOf(row.Cells.Count)}, and the extra ones hold a date or a kind", $"expected {cellCount}, one for each column of the heading",
        "break the line where the second row begins");

    private static Diagnostic TooManyCells(RowText row, int cellCount) => row.Problem(
        cellCount, "R0117", Severity.Error,
        Cells(row.Cells.Count), $"expected {cellCount}, one for each column of the heading",
        "put a cell that holds a comma in quotation marks");

    private static string Cells(int count) => $"this row has {CountOf(count)}";

    private static string CountOf(int count) => count == 1 ? "1 cell" : $"{count} cells";

    /// <summary>A text as a cell in quotation marks.</summary>
    private static string Quoted(string text) => $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
