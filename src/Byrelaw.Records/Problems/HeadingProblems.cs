namespace Byrelaw.Records.Problems;

/// <summary>What can be wrong with a file as a whole and with its heading.</summary>
internal static class HeadingProblems
{
    public static Diagnostic Utf16(string file) => new(
        "R0101", Severity.Error, file, 1, 1, 1,
        "the file is saved in UTF-16, so nothing in it can be read", "expected UTF-8", "save it again as \"CSV UTF-8\"", "");

    public static Diagnostic Empty(string file, string required) => new(
        "R0102", Severity.Error, file, 1, 1, 1,
        "the file is empty", $"expected a heading line with {required}",
        "export it again; where nothing is on record yet, the heading line is enough", "");

    public static Diagnostic MissingColumns(RowText heading, IReadOnlyList<string> missing, IReadOnlyList<string> required) => heading.Problem(
        0, "R0103", Severity.Error,
        $"there is no column {ColumnMap.Listed(missing, "or")}, so nothing in this file can be read",
        $"expected the {(required.Count == 1 ? "column" : "columns")} {ColumnMap.Listed(required, "and")}",
        $"write {ColumnMap.Listed(missing, "and")} above the {(missing.Count == 1 ? "column that holds it" : "columns that hold them")}");

    public static Diagnostic OtherSeparator(RowText heading) => heading.Problem(
        0, "R0106", Severity.Error,
        $"the cells are separated by {(heading.Text.Contains(';') ? "semicolons" : "tabs")}, so nothing in this file can be read",
        "expected commas", "save it again as \"CSV UTF-8\" with commas");

    public static Diagnostic DuplicateColumn(RowText heading, int cell, string column) => heading.Problem(
        cell, "R0104", Severity.Error,
        $"`{heading.Cells[cell].Value}` is a second column for `{column}`", "expected it once",
        "remove one of the two: until then neither is read");

    public static Diagnostic UnknownColumn(RowText heading, int cell, string expected, string? nearest) => heading.Problem(
        cell, "R0105", Severity.Warning,
        heading.Cells[cell].Value.Length == 0 ? "a column without a name is not read" : $"the column `{heading.Cells[cell].Value}` is not read",
        expected,
        nearest is not null ? $"perhaps `{nearest}` is meant"
            : heading.Cells[cell].Value.Length == 0 ? "give it a name, or remove it"
            : "rename it if it holds one of these; otherwise it does no harm");
}
