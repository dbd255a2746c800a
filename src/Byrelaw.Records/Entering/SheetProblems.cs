using NodaTime.Text;

namespace Byrelaw.Records.Entering;

/// <summary>What can be wrong with a sheet that comes back. Any of it, and nothing of the sheet is written.</summary>
internal static class SheetProblems
{
    public static Diagnostic NotText(string file) => OfFile("R0401", file, "this file is no text in UTF-8, and no workbook", "expected a sheet with its rows filled in", "save it again as \"CSV UTF-8\", or as .xlsx");

    public static Diagnostic NoHeadings(string file) => OfFile("R0401", file, "this file has no headings", "expected a sheet with its rows filled in", "fill in the file that was written with the sheet");

    public static Diagnostic WithoutColumns(SourceTable table, IReadOnlyList<string> missing) => new(
        "R0401", Severity.Error, table.Shown, table.HeadingRow, 1, Math.Max(1, table.HeadingText.Length), $"there is no column {ColumnMap.Listed(missing, "or")}", "expected `animal`, `date`, and a column for each kind of record",
        "head the columns so; on a sheet of byrelaw's own they stand there", table.HeadingText);

    public static Diagnostic UnknownColumn(SourceTable table, string heading, string? nearest) => new(
        "R0402", Severity.Error, table.Shown, table.HeadingRow, Place(table.HeadingText, heading), Math.Max(1, heading.Length), $"no rule file declares `{heading}`", "expected an event, a measure or a test, or one and a detail of it such as `transfer: side`",
        nearest is null ? "head it so, or take the column out if nobody need read it" : $"perhaps `{nearest}` is meant", table.HeadingText);

    public static Diagnostic NoSuchSheet(SourceTable table, SourceRow row, string number, string? nearest) => OfRow(
        "R0403", table, row, number, $"the ledger has no sheet {number}", "expected the number of a sheet that was written",
        nearest is null ? "a file of your own has no `sheet` and no `row`: leave both empty" : $"perhaps {nearest} is meant; a file of your own has no `sheet` and no `row`");

    public static Diagnostic OfAnotherSheet(SourceTable table, SourceRow row, string cell, string number) => OfRow(
        "R0403", table, row, cell, cell.Length == 0 ? "this row does not say of which sheet it is" : $"this row is of sheet {cell}", $"expected {number}, as in the rows above", "record each sheet by itself");

    public static Diagnostic NotOnTheSheet(SourceTable table, SourceRow row, string cell, string number) => OfRow(
        "R0404", table, row, cell, cell.Length == 0 ? "this row has no number" : $"sheet {number} has no row {cell}", "expected a row of that sheet, once",
        "whoever was handled besides goes into a file of her own, with the same headings and without `sheet` and `row`");

    public static Diagnostic OtherAnimal(SourceTable table, SourceRow row, string cell, string number, int at, string animal) => OfRow(
        "R0404", table, row, cell, cell.Length == 0 ? "this row names no animal" : $"row {at} of sheet {number} is of {animal}, not of {cell}", $"expected {animal}",
        $"whoever was handled in her place goes into a file of her own; of {animal} say `no` and why");

    public static Diagnostic NotADate(SourceTable table, SourceRow row, string cell) => OfRow(
        "R0405", table, row, cell, cell.Length == 0 ? "this row has no date" : $"`{cell}` is not a date", "expected year-month-day, such as `2026-10-19`", "write the day on which it was done");

    public static Diagnostic AfterToday(SourceTable table, SourceRow row, string cell) => OfRow("R0405", table, row, cell, $"{cell} is to come", "expected a day that has come", "write the day on which it was done");

    public static Diagnostic BeforeTheSheet(SourceTable table, SourceRow row, string cell, string number, LocalDate written) => OfRow(
        "R0405", table, row, cell, $"sheet {number} was not written before {LocalDatePattern.Iso.Format(written)}, and this row says {cell}", "expected that day or a later one", "write the day on which it was done; blank is the sheet's own day");

    public static Diagnostic DetailOfNothing(SourceTable table, SourceRow row, string cell, string kind, string detail) => OfRow(
        "R0406", table, row, cell, $"`{kind}: {detail}` is filled in, and nothing stands under `{kind}`", $"expected `yes`, `no` or an answer under `{kind}`", $"write it there; add the column `{kind}` where it is missing");

    public static Diagnostic DoneOfNothing(SourceTable table, SourceRow row, string cell) => OfRow(
        "R0406", table, row, cell, $"`{cell}` under `done`, and nothing says of what", "expected `yes`, `no` or an answer under a column for each kind of record", "`done` is for sheets of byrelaw's own; in a file of your own write under `transfer`, `hormone given` or whatever it was");

    public static Diagnostic NotYesOrNo(SourceTable table, SourceRow row, string cell, string column) => OfRow(
        "R0406", table, row, cell, $"`{cell}` under `{column}`", "expected `yes`, `no` or nothing",
        NameFolding.Fold(cell) == "x" ? "a cross may tick it or cross it out: write the word" : "blank is open: nothing is written of it, and she stays in doubt");

    public static Diagnostic BothYesAndNo(SourceTable table, SourceRow row, string kind) => OfRow(
        "R0406", table, row, "", $"`done` says yes, and `{kind}` says no", "expected one of them", "where a device went in, something was given; where nothing was done, say `no` under `done`");

    public static Diagnostic NoReason(SourceTable table, SourceRow row) => OfRow("R0407", table, row, "", "`no`, and no reason", "expected why it was not done, under `reason`", "a word or two is enough, such as `not found` or `rain`");

    public static Diagnostic TestWithout(SourceTable table, SourceRow row, string test, string detail) => OfRow(
        "R0408", table, row, "", $"a {test} without its {detail}", "expected how it was found, and who found it", $"write the {detail} under `{test}: {detail}`; a tick is no test");

    public static Diagnostic OnRecordOtherwise(SourceTable table, SourceRow row, string file, int line, string was, string now) => OfRow(
        "R0409", table, row, "", $"line {line} of {file} says otherwise already: {was} there, {now} here", "expected the same, or what was blank", "if the record is wrong, mend it there by hand; what happened once is written once");

    public static Diagnostic FallsApart(SourceTable table, SourceRow row, string flaw) => OfRow("R0410", table, row, "", flaw, "so nobody can tell what was done", "look at the row; a cell with a comma in it stands in quotation marks");

    public static Diagnostic EndsWithoutLineEnd(string file, int line, string text) => new(
        "R0411", Severity.Error, file, line, 1, Math.Max(1, text.Length), "the file ends here without a line end, and nobody can tell whether all of this row is there", "expected the end of a line before anything is written below it",
        "look at the row; if it is whole, end it with the Enter key and save the file", text);

    public static Diagnostic CannotBeWritten(string file, string text) => new(
        "R0411", Severity.Error, file, 1, 1, Math.Max(1, text.Length), "under these headings nothing can be written", "expected one column each of `date`, `animal` and `kind`, in UTF-8 with commas between", "mend the headings; nothing was written", text);

    public static Diagnostic AreRecords(SourceTable table) => new(
        "R0412", Severity.Error, table.Shown, table.HeadingRow, Place(table.HeadingText, "kind"), "kind".Length, "these are records already: a row for each event, with what happened under `kind`", "expected a sheet, with a column for each kind of record",
        "records are read where they lie, and nothing is to be recorded of them; on a sheet stands `hormone given` or `transfer` where these rows have `kind`", table.HeadingText);

    public static Diagnostic OtherStraw(SourceTable table, SourceRow row, string read, string embryo, string straw, string? other) => OfRow(
        "R0413", table, row, read, $"straw {read} was read, and {embryo} is in {straw}", "expected that embryo's own straw", other is null ? "look at the straw, and write what was read" : $"{read} holds {other}: if that went in, write {other} as the embryo of this row");

    private static Diagnostic OfFile(string code, string file, string found, string expected, string help) => new(code, Severity.Error, file, 1, 1, 1, found, expected, help, "");

    private static Diagnostic OfRow(string code, SourceTable table, SourceRow row, string cell, string found, string expected, string help)
    {
        var text = Unreadable.Unmarked(row.Text);
        return new(code, Severity.Error, table.Shown, row.Number, Place(text, cell), Math.Max(1, cell.Length), found, expected, help, text);
    }

    private static int Place(string text, string cell) => cell.Length == 0 || text.IndexOf(cell, StringComparison.Ordinal) is not (>= 0 and var at) ? 1 : at + 1;
}
