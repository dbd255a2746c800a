namespace Byrelaw.Records.Problems;

/// <summary>What can be wrong with a source as a whole.</summary>
internal static class SourceFileProblems
{
    private const string Suspends = "until it is there, nothing that it could say is known of anyone";

    public static Diagnostic NotThere(string file) => new(
        "R0301", Severity.Error, file, 1, 1, 1, $"there is no file {file}", Suspends, "put it into the folder of the records, or correct its name behind `from`", "");

    public static Diagnostic NotText(string file, string? letters) => new(
        "R0302", Severity.Error, file, 1, 1, 1, $"the letters of this file are not written in {letters ?? "UTF-8"}, or it breaks off", Suspends,
        "say how they are written, such as `in Windows-1252` behind the file's name, or save it again as \"CSV UTF-8\"", "");

    public static Diagnostic NoHeadings(string file, int row) => new(
        "R0303", Severity.Error, file, row, 1, 1, $"no headings stand in row {row}", Suspends, "say where they stand, such as `headings in row 3` behind the file's name", "");

    public static Diagnostic TooLarge(string file, string reason) => new(
        "R0306", Severity.Error, file, 1, 1, 1, $"this file is not read: {reason}", "until it can be read, nothing that it could say is known of anyone",
        "part it, by herd or by year, and write a `from` for each part", "");

    public static Diagnostic FallsApart(string file, int row, string text, string flaw) => new(
        "R0307", Severity.Error, file, row, 1, Math.Max(1, text.Length), flaw, "so it may have said anything of anybody", "look at the row in the file; a cell with the separator or a quotation mark in it stands in quotation marks", text);

    /// <param name="table">Where it is sought.</param>
    /// <param name="heading">The column.</param>
    /// <param name="near">A heading that is like it.</param>
    /// <param name="areRowsRead">Whether the rows can be read without it.</param>
    public static Diagnostic NoColumn(SourceTable table, string heading, string? near, bool areRowsRead) => new(
        "R0304", Severity.Error, table.Shown, table.HeadingRow, 1, Math.Max(1, table.HeadingText.Length),
        $"there is no column `{heading}`, or there are two", areRowsRead ? "until it is there, what it would say is not known of anyone" : Suspends, near is null ? "look for its heading, or take the line out" : $"perhaps `{near}` is meant", table.HeadingText);

    /// <param name="table">Where they stand.</param>
    /// <param name="headings">The headings.</param>
    /// <param name="harmless">Those that tell of no service, calf or drying off.</param>
    public static Diagnostic NotRead(SourceTable table, IReadOnlyList<string> headings, IReadOnlyList<string> harmless) => new(
        "R0305", Severity.Warning, table.Shown, table.HeadingRow, 1, Math.Max(1, table.HeadingText.Length),
        headings.Count == 1 ? $"the column {ColumnMap.Listed(headings, "and")} is not read" : $"the columns {ColumnMap.Listed(headings, "and")} are not read", null,
        harmless.Count == 0 ? "say what stands there" : $"say what stands there, or `leave out columns {string.Join(", ", harmless.Select(heading => $"\"{heading}\""))}`", table.HeadingText);

    public static Diagnostic LacksPages(string file, int page, int pages) => new(
        "R0317", Severity.Error, file, 1, 1, 1, page > 0 ? $"this is page {page} of {pages}, and the others are not all there" : $"this is one of {pages} pages, and it does not say which", Suspends,
        "ask its sender for every page, and put all of them into the folder that `from` names", "");

    public static Diagnostic NotMessages(string file) => new(
        "R0316", Severity.Error, file, 1, 1, 1, "this is no file of messages (JSON), or it breaks off, is nested deeper than 32 levels, holds a text longer than 64 kB, or says one thing twice in a message", Suspends,
        "ask its sender for it again, or take it out of the folder", "");
}
