using Byrelaw.Language.Canonical;

namespace Byrelaw.Records.Suggesting;

/// <summary>A file of a farm's, as far as its bytes alone tell how it is written.</summary>
internal sealed class SuggestedFile
{
    private static readonly ImmutableArray<(char Sign, string Words)> Separators = [(',', "commas"), (';', "semicolons"), ('\t', "tabs"), ('|', "bars")];

    private readonly string _file;
    private readonly string? _sheet;
    private readonly Headings _headings;

    private SuggestedFile(string file, string? sheet, SourceTable table, char separator, Headings headings, string? letters, LocalDate today)
    {
        (_file, _sheet, Table, Separator, _headings, Letters) = (file, sheet, table, separator, headings, letters);
        Sums = SumRows.Of(table);
        var rows = table with { Rows = [.. table.Rows.Where(row => !Sums.Any(sum => row[sum.Column] == sum.Text))] };
        Columns = [.. Enumerable.Range(0, table.Headings.Count).Select(index => new ColumnProfile(rows, index, today, headings.Lowest is { } lowest && index < lowest.Count ? lowest[index] : null))];
    }

    /// <summary>The file, within the folder of the records, and its sheet where it is a workbook.</summary>
    public string Name => _sheet is null ? _file : $"{_file}, {_sheet}";

    /// <summary>What it is called itself: the sheet, where it is one of a workbook.</summary>
    public string OwnName => _sheet ?? _file;

    /// <summary>Its headings and rows.</summary>
    public SourceTable Table { get; }

    /// <summary>Its columns, but for rows of sums.</summary>
    public ImmutableArray<ColumnProfile> Columns { get; }

    /// <summary>Texts by which rows of sums are known.</summary>
    public IReadOnlyList<(int Column, string Text)> Sums { get; }

    /// <summary>Whether a row of it looks like headings, or somebody says which one is.</summary>
    public bool HasHeadings => _headings.AreTold;

    /// <summary>What stands between cells.</summary>
    public char Separator { get; }

    /// <summary>How letters are written; null for UTF-8 or what the file's own mark says.</summary>
    public string? Letters { get; }

    /// <summary>The clauses of its <c>from</c> line that say how it is written.</summary>
    public IEnumerable<string> Written => new[]
    {
        $"from {NameText.Text(_file)}",
        _sheet is null ? null : $"sheet {NameText.Text(_sheet)}",
        _headings switch { { First: 1, Last: 1 } => null, var rows when rows.First == rows.Last => $"headings in row {rows.Last}", var rows => $"headings in rows {rows.First} to {rows.Last}" },
        Separator == ',' ? null : $"separated by {WordsOf(Separator)}",
        Letters is null ? null : $"in {Letters}",
    }.OfType<string>();

    /// <summary>How many rows and columns there are, what stands between cells, and how letters are written.</summary>
    public string Shape =>
        $"{Name}: {Table.Rows.Count} {(Table.Rows.Count == 1 ? "row" : "rows")}, {Table.Headings.Count} columns{(_sheet is null ? $", {WordsOf(Separator)}" : "")}{(Letters is null ? "" : $", {Letters}")}";

    /// <summary>Reads a file: a text is one table, a workbook one for each of its sheets. Null, and why, where there is none.</summary>
    /// <param name="name">Of the file.</param>
    /// <param name="bytes">As they stand on disk.</param>
    /// <param name="said">What a programme says already of where headings stand, and what stands between cells.</param>
    /// <param name="today">What day it is.</param>
    public static IEnumerable<(SuggestedFile? File, string Shown, string? WhyNot)> Read(string name, byte[] bytes, IReadOnlyList<RecordSource> said, LocalDate today)
    {
        if (!WorkbookTable.Is(bytes))
        {
            var (file, whyNot) = OfText(name, bytes, said.FirstOrDefault(), today);
            return [(file, name, whyNot)];
        }

        var sheets = WorkbookTable.Sheets(bytes, WorkbookBounds.Usual);
        return sheets.Count == 0 ? [(null, name, "no workbook that can be read; an older one (.xls) or one with a password: save it as .xlsx without a password")]
            : sheets.Select(sheet => OfSheet(name, sheet, bytes, said.FirstOrDefault(one => one.Sheet == sheet || (one.Sheet is null && sheets.Count == 1)), today));
    }

    private static (SuggestedFile? File, string Shown, string? WhyNot) OfSheet(string name, string sheet, byte[] bytes, RecordSource? said, LocalDate today)
    {
        var headings = Headings.Of(said) ?? Headings.Found(RowsOf(name, sheet, bytes));
        var lowest = headings.First == headings.Last ? null : Sheet(name, sheet, bytes, headings.Last, headings.Last)?.Headings;
        return Sheet(name, sheet, bytes, headings.First, headings.Last) is { Rows.Count: > 0 } table
            ? (new SuggestedFile(name, sheet, table, ',', headings with { Lowest = lowest }, null, today), name, null)
            : (null, $"{name}, {sheet}", "no rows below its headings");
    }

    /// <summary>The rows of a sheet from its first one on that is not blank.</summary>
    private static List<(int Number, string[] Cells)> RowsOf(string name, string sheet, byte[] bytes)
    {
        for (var row = 1; row <= FirstRow; row++)
        {
            if (Sheet(name, sheet, bytes, row, row) is { } table)
            {
                return [(row, [.. table.Headings]), .. table.Rows.Take(MostRows).Select(one => (one.Number, one.Cells))];
            }
        }

        return [];
    }

    private static SourceTable? Sheet(string name, string sheet, byte[] bytes, int first, int last) =>
        WorkbookTable.Read(name, bytes, new RecordSource(name, SourceRows.Events, default) { Sheet = sheet, HeadingRows = (first, last) }, WorkbookBounds.Usual, out _);

    private static (SuggestedFile? File, string? WhyNot) OfText(string name, byte[] bytes, RecordSource? said, LocalDate today)
    {
        var letters = said?.LettersIn;
        var text = SourceText.Of(bytes, letters, SourceReader.MostBytes, out _);
        if (text is null && letters is null)
        {
            text = SourceText.Of(bytes, letters = "Windows-1252", SourceReader.MostBytes, out _);
        }

        if (text is null || text.Contains('\0', StringComparison.Ordinal) || !LooksLikeText(text))
        {
            return (null, GzipFile.Is(bytes) ? "it is packed, and breaks off or is damaged: export it again" : "no text that can be read: a list that byrelaw can read is a CSV or another text file, or a workbook (.xlsx)");
        }

        var best = Separators.Where(separator => said is null || separator.Sign == said.Separator).Select(separator => (separator.Sign, Rows: Shaped(name, text, separator.Sign, said))).MaxBy(one => one.Rows.Score);
        return best.Rows.Table is { } table && table.Rows.Count > 0
            ? (new SuggestedFile(name, null, table, best.Sign, best.Rows.Headings, letters, today), null)
            : (null, "no rows below its headings");
    }

    /// <summary>Whether people wrote it: pictures and printed pages that open as letters are full of signs that no text has.</summary>
    private static bool LooksLikeText(string text)
    {
        var start = text.AsSpan(0, Math.Min(text.Length, 4096));
        var odd = 0;
        foreach (var sign in start)
        {
            odd += char.IsControl(sign) && sign is not ('\n' or '\r' or '\t' or '\f') ? 1 : 0;
        }

        return 100 * odd <= start.Length && !start.StartsWith("%PDF");
    }

    /// <summary>The text parted by a sign, with how well that fits: cells in rows that have as many as the headings, for rows of one cell say nothing.</summary>
    private static (SourceTable? Table, Headings Headings, long Score) Shaped(string name, string text, char separator, RecordSource? said)
    {
        var headings = Headings.Of(said) ?? Headings.Found(TextTable.FirstRows(text, separator, MostRows));
        var lowest = headings.First == headings.Last ? null : Parted(name, text, separator, headings.Last, headings.Last)?.Headings;
        var table = Parted(name, text, separator, headings.First, headings.Last);
        return (table, headings with { Lowest = lowest }, table is null || table.Headings.Count < 2 ? 0 : (long)table.Rows.Count(row => row.Flaw is null) * table.Headings.Count);
    }

    private static SourceTable? Parted(string name, string text, char separator, int first, int last) =>
        TextTable.Read(name, text, new RecordSource(name, SourceRows.Events, default) { Separator = separator, HeadingRows = (first, last) }, out _);

    private const int FirstRow = 20;
    private const int MostRows = 500;

    private static string WordsOf(char separator) => Separators.First(one => one.Sign == separator).Words;

    /// <param name="First">The first heading row, from 1.</param>
    /// <param name="Last">The last one.</param>
    /// <param name="AreTold">Whether a row looks like headings, or somebody says so.</param>
    private sealed record Headings(int First, int Last, bool AreTold)
    {
        /// <summary>What the lowest of several rows says.</summary>
        public IReadOnlyList<string>? Lowest { get; init; }

        public static Headings? Of(RecordSource? said) => said is null ? null : new Headings(said.HeadingRows.First, said.HeadingRows.Last, AreTold: true);

        public static Headings Found(IReadOnlyList<(int Number, string[] Cells)> rows) =>
            HeadingRows.Of(rows) is var (first, last) ? new Headings(first, last, AreTold: true) : new Headings(1, 1, AreTold: false);
    }
}
