namespace Byrelaw.Reporting.Files;

/// <summary>Writes comma-separated values as RFC 4180 has them, and lets no cell run as a formula.</summary>
public static class Csv
{
    private static readonly char[] MustQuote = [',', '"', '\r', '\n'];

    /// <summary>One record with its line end.</summary>
    public static string Record(params string[] cells) => string.Join(',', cells.Select(Cell)) + "\r\n";

    private static string Cell(string text)
    {
        var safe = Defuse(text);
        return safe.IndexOfAny(MustQuote) < 0 ? safe : $"\"{safe.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
    }

    /// <summary>
    /// A spreadsheet takes a cell that starts with one of these for a formula; an apostrophe
    /// before it makes it a text again. Wide forms of the signs count too. Source: OWASP, "CSV Injection".
    /// </summary>
    private static string Defuse(string text) =>
        text.Length > 0 && text[0] is '=' or '+' or '-' or '@' or '\t' or '\r' or '\n' or '＝' or '＋' or '－' or '＠' ? "'" + text : text;
}
