using Byrelaw.Language.Canonical;

namespace Byrelaw.Records.Suggesting;

/// <summary>A file of a farm's, as far as its bytes alone tell how it is written.</summary>
internal sealed class SuggestedFile
{
    private static readonly ImmutableArray<(char Sign, string Words)> Separators = [(',', "commas"), (';', "semicolons"), ('\t', "tabs"), ('|', "bars")];

    private SuggestedFile(string name, SourceTable table, char separator, int headingRow, string? letters, LocalDate today)
    {
        (Name, Table, Separator, HeadingRow, Letters) = (name, table, separator, headingRow, letters);
        Columns = [.. Enumerable.Range(0, table.Headings.Count).Select(index => new ColumnProfile(table, index, today))];
    }

    /// <summary>The file, within the folder of the records.</summary>
    public string Name { get; }

    /// <summary>Its headings and rows.</summary>
    public SourceTable Table { get; }

    /// <summary>Its columns.</summary>
    public ImmutableArray<ColumnProfile> Columns { get; }

    /// <summary>Where the headings stand, from 1.</summary>
    public int HeadingRow { get; }

    /// <summary>What stands between cells.</summary>
    public char Separator { get; }

    /// <summary>How letters are written; null for UTF-8 or what the file's own mark says.</summary>
    public string? Letters { get; }

    /// <summary>The clauses of its <c>from</c> line that say how it is written.</summary>
    public IEnumerable<string> Written => new[]
    {
        $"from {NameText.Text(Name)}",
        HeadingRow == 1 ? null : $"headings in row {HeadingRow}",
        Separator == ',' ? null : $"separated by {WordsOf(Separator)}",
        Letters is null ? null : $"in {Letters}",
    }.OfType<string>();

    /// <summary>How many rows and columns there are, what stands between cells, and how letters are written.</summary>
    public string Shape =>
        $"{Name}: {Table.Rows.Count} {(Table.Rows.Count == 1 ? "row" : "rows")}, {Table.Headings.Count} columns, {WordsOf(Separator)}{(Letters is null ? "" : $", {Letters}")}";

    /// <summary>Reads a file; null, and why, where its bytes are no table of text.</summary>
    public static (SuggestedFile? File, string? WhyNot) Read(string name, byte[] bytes, LocalDate today)
    {
        if (bytes.AsSpan().StartsWith("PK"u8) || bytes.AsSpan().StartsWith(new byte[] { 0xD0, 0xCF, 0x11, 0xE0 }))
        {
            return (null, "a workbook; its lines are not suggested: write them by hand, from the sheet that they name, or save each sheet as a CSV file");
        }

        string? letters = null;
        var text = SourceText.Of(bytes, null, SourceReader.MostBytes, out _);
        if (text is null)
        {
            text = SourceText.Of(bytes, letters = "Windows-1252", SourceReader.MostBytes, out _);
        }

        if (text is null || text.Contains('\0', StringComparison.Ordinal))
        {
            return (null, "no text that can be read");
        }

        var best = Separators.Select(separator => (separator.Sign, Rows: Shaped(name, text, separator.Sign))).MaxBy(one => one.Rows.Score);
        return best.Rows.Table is { } table && table.Rows.Count > 0
            ? (new SuggestedFile(name, table, best.Sign, best.Rows.HeadingRow, letters, today), null)
            : (null, "no rows below its headings");
    }

    /// <summary>The text parted by a sign, with how well that fits: cells in rows that have as many as the headings, for rows of one cell say nothing.</summary>
    private static (SourceTable? Table, int HeadingRow, long Score) Shaped(string name, string text, char separator)
    {
        var first = Parted(name, text, separator, 1);
        var usual = first is null ? 0 : first.Rows.Select(row => row.Cells.Length).Append(first.Headings.Count)
            .CountBy(count => count).MaxBy(count => count.Value).Key;

        // A title above the headings has fewer cells than the rows.
        var heading = first is null || first.Headings.Count >= usual ? 1
            : first.Rows.FirstOrDefault(row => row.Cells.Length == usual && Array.TrueForAll(row.Cells, cell => cell.Length > 0)) is { Number: > 1 and <= 20 } row ? row.Number : 1;
        var table = heading == 1 ? first : Parted(name, text, separator, heading);
        return (table, heading, table is null || table.Headings.Count < 2 ? 0 : (long)table.Rows.Count(row => row.Flaw is null) * table.Headings.Count);
    }

    private static SourceTable? Parted(string name, string text, char separator, int headingRow) =>
        TextTable.Read(name, text, new RecordSource(name, SourceRows.Events, default) { Separator = separator, HeadingRows = (headingRow, headingRow) }, out _);

    private static string WordsOf(char separator) => Separators.First(one => one.Sign == separator).Words;
}
