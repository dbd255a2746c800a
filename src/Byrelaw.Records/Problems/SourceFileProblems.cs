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

    /// <param name="table">Where they are sought.</param>
    /// <param name="missing">The columns, each with a heading that is like it.</param>
    /// <param name="areRowsRead">Whether the rows can be read without them.</param>
    public static Diagnostic NoColumns(SourceTable table, IReadOnlyList<(string Heading, string? Near)> missing, bool areRowsRead) => new(
        "R0304", Severity.Error, table.Shown, table.HeadingRow, 1, Math.Max(1, table.HeadingText.Length),
        missing.Count == 1 ? $"there is no column `{missing[0].Heading}`, or there are two" : $"there are no columns {ColumnMap.Listed([.. missing.Select(one => one.Heading)], "and")}, or two of one name",
        areRowsRead ? $"until {(missing.Count == 1 ? "it is" : "they are")} there, what {(missing.Count == 1 ? "it" : "they")} would say is not known of anyone" : Suspends,
        Help(table, missing), table.HeadingText);

    /// <summary>Where most of what is sought is not there, the headings themselves may stand elsewhere.</summary>
    private static string Help(SourceTable table, IReadOnlyList<(string Heading, string? Near)> missing)
    {
        var near = missing.Where(one => one.Near is not null).Select(one => missing.Count == 1 ? $"perhaps `{one.Near}` is meant" : $"`{one.Heading}` is perhaps `{one.Near}`").ToList();
        return near.Count > 0 ? string.Join("; ", near)
            : missing.Count > 2 ? $"look whether the headings stand in row {table.HeadingRow.ToString(CultureInfo.InvariantCulture)}, and say where they stand, such as `headings in row 4` behind the file's name"
            : missing.Count == 1 ? "look for its heading, or take the line out" : "look for their headings, or take the lines out";
    }

    /// <param name="file">A source that there is.</param>
    public static Diagnostic NoAnimals(string file) => new(
        "R0318", Severity.Error, file, 1, 1, 1, "no source says which animals there are", "so every row is of an animal that nobody knows, and the lists are empty",
        "name a file that lists them: `from \"cows.csv\", a row for each animal`, with a line such as `animal in \"No\"` below it", "");

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
