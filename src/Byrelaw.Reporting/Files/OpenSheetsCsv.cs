namespace Byrelaw.Reporting.Files;

/// <summary>What rows of open sheets would write, for a spreadsheet: one line each. It lies in every report, for who judges again must doubt the same.</summary>
public static class OpenSheetsCsv
{
    /// <summary>The file's name in a report.</summary>
    public const string File = "open-sheets.csv";

    /// <summary>The file's text.</summary>
    public static string Of(Herd herd)
    {
        ArgumentNullException.ThrowIfNull(herd);
        var csv = new StringBuilder(Csv.Record("sheet", "row", "date", "session", "animal", "embryo", "kind", "device"));
        foreach (var row in herd.OpenRows)
        {
            csv.Append(Csv.Record(
                PlainText.Clean(row.Sheet.Number), $"{row.Row.Row}", LocalDatePattern.Iso.Format(row.For), row.Sheet.Session is { } session ? $"{session}" : "", PlainText.Clean(row.Row.Animal ?? ""),
                PlainText.Clean(row.Row.Embryo ?? ""), PlainText.Clean(row.Entry.Kind), row.Entry.Device ?? ""));
        }

        return csv.ToString();
    }
}
