using Byrelaw.Language.Canonical;

namespace Byrelaw.Records.Suggesting;

/// <summary>A file of a farm's, as far as its bytes alone tell how it is written.</summary>
internal sealed class SuggestedFile
{
    private static readonly ImmutableArray<(char Sign, string Words)> Separators = [(',', "commas"), (';', "semicolons"), ('\t', "tabs"), ('|', "bars")];

    private readonly string _file;
    private readonly string? _sheet;

    private SuggestedFile(string file, string? sheet, SourceTable table, char separator, int headingRow, string? letters, LocalDate today)
    {
        (_file, _sheet, Table, Separator, HeadingRow, Letters) = (file, sheet, table, separator, headingRow, letters);
        Sums = SumRows.Of(table);
        var rows = table with { Rows = [.. table.Rows.Where(row => !Sums.Any(sum => row[sum.Column] == sum.Text))] };
        Columns = [.. Enumerable.Range(0, table.Headings.Count).Select(index => new ColumnProfile(rows, index, today))];
    }

    /// <summary>The file, within the folder of the records, and its sheet where it is a workbook.</summary>
    public string Name => _sheet is null ? _file : $"{_file}, {_sheet}";

    /// <summary>Its headings and rows.</summary>
    public SourceTable Table { get; }

    /// <summary>Its columns, but for rows of sums.</summary>
    public ImmutableArray<ColumnProfile> Columns { get; }

    /// <summary>Texts by which rows of sums are known.</summary>
    public IReadOnlyList<(int Column, string Text)> Sums { get; }

    /// <summary>Where the headings stand, from 1.</summary>
    public int HeadingRow { get; }

    /// <summary>What stands between cells.</summary>
    public char Separator { get; }

    /// <summary>How letters are written; null for UTF-8 or what the file's own mark says.</summary>
    public string? Letters { get; }

    /// <summary>The clauses of its <c>from</c> line that say how it is written.</summary>
    public IEnumerable<string> Written => new[]
    {
        $"from {NameText.Text(_file)}",
        _sheet is null ? null : $"sheet {NameText.Text(_sheet)}",
        HeadingRow == 1 ? null : $"headings in row {HeadingRow}",
        Separator == ',' ? null : $"separated by {WordsOf(Separator)}",
        Letters is null ? null : $"in {Letters}",
    }.OfType<string>();

    /// <summary>How many rows and columns there are, what stands between cells, and how letters are written.</summary>
    public string Shape =>
        $"{Name}: {Table.Rows.Count} {(Table.Rows.Count == 1 ? "row" : "rows")}, {Table.Headings.Count} columns{(_sheet is null ? $", {WordsOf(Separator)}" : "")}{(Letters is null ? "" : $", {Letters}")}";

    /// <summary>Reads a file: a text is one table, a workbook one for each of its sheets. Null, and why, where there is none.</summary>
    public static IEnumerable<(SuggestedFile? File, string Shown, string? WhyNot)> Read(string name, byte[] bytes, LocalDate today)
    {
        if (!WorkbookTable.Is(bytes))
        {
            var (file, whyNot) = OfText(name, bytes, today);
            return [(file, name, whyNot)];
        }

        var sheets = WorkbookTable.Sheets(bytes, WorkbookBounds.Usual);
        return sheets.Count == 0 ? [(null, name, "no workbook that can be read")] : sheets.Select(sheet => OfSheet(name, sheet, bytes, today));
    }

    private static (SuggestedFile? File, string Shown, string? WhyNot) OfSheet(string name, string sheet, byte[] bytes, LocalDate today)
    {
        var row = HeadingRowOf(Sheet(name, sheet, bytes, 1));
        return Sheet(name, sheet, bytes, row) is { Rows.Count: > 0 } table
            ? (new SuggestedFile(name, sheet, table, ',', row, null, today), name, null)
            : (null, $"{name}, {sheet}", "no rows below its headings");
    }

    private static SourceTable? Sheet(string name, string sheet, byte[] bytes, int headingRow) =>
        WorkbookTable.Read(name, bytes, new RecordSource(name, SourceRows.Events, default) { Sheet = sheet, HeadingRows = (headingRow, headingRow) }, WorkbookBounds.Usual, out _);

    private static (SuggestedFile? File, string? WhyNot) OfText(string name, byte[] bytes, LocalDate today)
    {
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
            ? (new SuggestedFile(name, null, table, best.Sign, best.Rows.HeadingRow, letters, today), null)
            : (null, "no rows below its headings");
    }

    /// <summary>The text parted by a sign, with how well that fits: cells in rows that have as many as the headings, for rows of one cell say nothing.</summary>
    private static (SourceTable? Table, int HeadingRow, long Score) Shaped(string name, string text, char separator)
    {
        var first = Parted(name, text, separator, 1);
        var heading = HeadingRowOf(first);
        var table = heading == 1 ? first : Parted(name, text, separator, heading);
        return (table, heading, table is null || table.Headings.Count < 2 ? 0 : (long)table.Rows.Count(row => row.Flaw is null) * table.Headings.Count);
    }

    /// <summary>A title above the headings has fewer cells than the rows.</summary>
    private static int HeadingRowOf(SourceTable? first)
    {
        var usual = first is null ? 0 : first.Rows.Select(row => row.Cells.Length).Append(first.Headings.Count)
            .CountBy(count => count).MaxBy(count => count.Value).Key;
        return first is null || first.Headings.Count >= usual ? 1
            : first.Rows.FirstOrDefault(row => row.Cells.Length == usual && Array.TrueForAll(row.Cells, cell => cell.Length > 0)) is { Number: > 1 and <= 20 } row ? row.Number : 1;
    }

    private static SourceTable? Parted(string name, string text, char separator, int headingRow) =>
        TextTable.Read(name, text, new RecordSource(name, SourceRows.Events, default) { Separator = separator, HeadingRows = (headingRow, headingRow) }, out _);

    private static string WordsOf(char separator) => Separators.First(one => one.Sign == separator).Words;
}
