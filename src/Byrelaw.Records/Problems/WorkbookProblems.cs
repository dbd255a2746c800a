namespace Byrelaw.Records.Problems;

/// <summary>What can be wrong with a workbook as a whole.</summary>
internal static class WorkbookProblems
{
    private const string Suspends = "until it can be read, nothing that it could say is known of anyone";

    public static Diagnostic OldOrLocked(string file) => Of("R0311", file, "this workbook is of the old form (.xls), or has a password", "open it and save it as `.xlsx`, without a password");

    public static Diagnostic NotOne(string file) => Of("R0312", file, "this is no workbook that can be read, or it breaks off", "open it and save it again as `.xlsx`; save a text file as \"CSV UTF-8\"");

    public static Diagnostic TooLarge(string file, string reason) => Of("R0313", file, $"this workbook is not opened: {reason}", "save the sheet by itself as `.xlsx`, or as \"CSV UTF-8\"");

    public static Diagnostic WhichSheet(string file, string? named, IReadOnlyList<string> sheets)
    {
        var there = sheets.Count == 0 ? "it has none" : $"it has {ColumnMap.Listed(sheets, "and")}";
        return Of(
            "R0314", file, named is null ? $"this workbook has {sheets.Count} sheets, {ColumnMap.Listed(sheets, "and")}, and nothing says which is meant" : $"there is no sheet `{named}`; {there}",
            named is not null && NearestName.OnlyOne(named, sheets) is { } near ? $"perhaps `{near}` is meant"
            : sheets.Count == 0 ? "save it again as `.xlsx`" : $"say which behind the file's name, such as `sheet \"{sheets[0]}\"`");
    }

    public static Diagnostic NoSheets(string file) => Of("R0315", file, "this file is text and has no sheets", "take `sheet` out of its line, or name the workbook");

    private static Diagnostic Of(string code, string file, string found, string help) => new(code, Severity.Error, file, 1, 1, 1, found, Suspends, help, "");
}
