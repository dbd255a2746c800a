using System.IO.Compression;
using System.Xml;
using Byrelaw.Records.Sources;
using ExcelDataReader;

namespace Byrelaw.Records.Workbooks;

/// <summary>
/// Reads one sheet of a workbook into headings and rows. Cells that are dates are dates, in whatever order the source writes others; hidden rows and columns are read
/// like all others.
/// </summary>
internal static class WorkbookTable
{
    private static readonly byte[] Zip = [(byte)'P', (byte)'K', 3, 4];
    private static readonly byte[] Compound = [0xD0, 0xCF, 0x11, 0xE0, 0xA1, 0xB1, 0x1A, 0xE1];

    // What reads the values wants Windows' own letters to be there, whatever the workbook holds.
    static WorkbookTable() => Encoding.RegisterProvider(CodePagesEncodingProvider.Instance);

    /// <summary>Whether the bytes are a workbook's, or an older or locked one's that is not read.</summary>
    public static bool Is(byte[] bytes) => bytes.AsSpan().StartsWith(Zip) || bytes.AsSpan().StartsWith(Compound);

    /// <summary>The table; null, with what is wrong, where there is none.</summary>
    /// <param name="shown">The file, as messages name it.</param>
    /// <param name="bytes">As they stand on disk.</param>
    /// <param name="source">What the farm says of it.</param>
    /// <param name="bounds">How much is unpacked.</param>
    /// <param name="problem">What is wrong.</param>
    public static SourceTable? Read(string shown, byte[] bytes, RecordSource source, WorkbookBounds bounds, out Diagnostic? problem)
    {
        problem = null;
        if (bytes.AsSpan().StartsWith(Compound))
        {
            problem = WorkbookProblems.OldOrLocked(shown);
            return null;
        }

        try
        {
            using var archive = new ZipArchive(new MemoryStream(bytes, writable: false), ZipArchiveMode.Read);
            problem = bounds.Exceeded(archive) is { } reason ? WorkbookProblems.TooLarge(shown, reason) : null;
            return problem is null ? Read(shown, bytes, archive, source, out problem) : null;
        }
        catch (Exception exception) when (exception is InvalidDataException or XmlException or ExcelDataReader.Exceptions.ExcelReaderException
            or FormatException or ArgumentException or IndexOutOfRangeException or KeyNotFoundException or NullReferenceException or InvalidOperationException or OverflowException or NotSupportedException)
        {
            // The library that reads the values says in many ways that it cannot.
            problem = WorkbookProblems.NotOne(shown);
            return null;
        }
    }

    /// <summary>The names of the sheets in their order; none where the workbook cannot be read.</summary>
    public static IReadOnlyList<string> Sheets(byte[] bytes, WorkbookBounds bounds)
    {
        try
        {
            using var archive = new ZipArchive(new MemoryStream(bytes, writable: false), ZipArchiveMode.Read);
            return bounds.Exceeded(archive) is null ? [.. WorkbookSheets.Of(archive).Select(sheet => sheet.Name)] : [];
        }
        catch (Exception exception) when (exception is InvalidDataException or XmlException or ArgumentException or NotSupportedException)
        {
            return [];
        }
    }

    private static SourceTable? Read(string shown, byte[] bytes, ZipArchive archive, RecordSource source, out Diagnostic? problem)
    {
        var sheets = WorkbookSheets.Of(archive);
        var at = SheetOf(source, sheets);
        if (at < 0)
        {
            problem = WorkbookProblems.WhichSheet(shown, source.Sheet, [.. sheets.Select(sheet => sheet.Name)]);
            return null;
        }

        var held = WorkbookSheets.CellsOf(archive, sheets[at].Part);
        if (held.Exceeded is { } reason)
        {
            problem = WorkbookProblems.TooLarge(shown, reason);
            return null;
        }

        using var reader = ExcelReaderFactory.CreateOpenXmlReader(new MemoryStream(bytes, writable: false));
        while (reader.Name != sheets[at].Name)
        {
            // Sheets that hold a picture only are passed over by what reads the values: places differ, names do not.
            if (!reader.NextResult())
            {
                problem = SourceFileProblems.NoHeadings($"{shown}, {sheets[at].Name}", source.HeadingRows.Last);
                return null;
            }
        }

        var place = $"{shown}, {sheets[at].Name}";
        var rows = Rows(reader, held, new CellTexts(source));
        var (first, last) = source.HeadingRows;
        if (rows.Count < last)
        {
            problem = SourceFileProblems.NoHeadings(place, last);
            return null;
        }

        var joined = new JoinedCells(reader.MergeCells ?? []);
        var headings = joined.Headings(rows, first, last);
        if (!joined.TryMark(rows, last, headings.Length))
        {
            problem = WorkbookProblems.TooLarge(shown, "too many of its cells are joined");
            return null;
        }

        problem = Array.TrueForAll(headings, heading => heading.Length == 0) ? SourceFileProblems.NoHeadings(place, last) : null;
        return problem is not null ? null : new SourceTable(
            place, headings, Text(headings, source.Separator), last,
            [.. rows.Skip(last).Select((cells, i) => new SourceRow(last + i + 1, cells, Text(cells, source.Separator).AsMemory())).Where(row => !row.IsBlank)])
        { IsSheet = true };
    }

    /// <summary>The place of the sheet that is named; of the only one where none is. -1 for none, or several.</summary>
    private static int SheetOf(RecordSource source, IReadOnlyList<(string Name, string Part)> sheets)
    {
        if (source.Sheet is not { } name)
        {
            return sheets.Count == 1 ? 0 : -1;
        }

        for (var sheet = 0; sheet < sheets.Count; sheet++)
        {
            if (NameFolding.Fold(sheets[sheet].Name) == NameFolding.Fold(name))
            {
                return sheet;
            }
        }

        return -1;
    }

    private static List<string[]> Rows(IExcelDataReader reader, SheetCells held, CellTexts texts)
    {
        var rows = new List<string[]>(held.Rows);
        while (rows.Count < held.Rows && reader.Read())
        {
            var cells = new string[held.WidthOf(rows.Count)];
            for (var column = 0; column < cells.Length; column++)
            {
                cells[column] = held.FlawOf(rows.Count, column) is { } flaw ? Unreadable.Of(flaw)
                    : column < reader.FieldCount ? Text(reader, column, texts)
                    : "";
            }

            rows.Add(cells);
        }

        return rows;
    }

    private static string Text(IExcelDataReader reader, int column, CellTexts texts)
    {
        var value = reader.GetValue(column);
        return texts.Of(value, value is DateTime ? reader.GetNumberFormatString(column) : null);
    }

    private static string Text(string[] cells, char separator) => string.Join(separator, cells.Select(cell => Quoted(Unreadable.Unmarked(cell), separator)));

    private static string Quoted(string cell, char separator)
    {
        var line = cell.AsSpan().ContainsAny('\n', '\r') ? cell.ReplaceLineEndings(" ") : cell;
        return line.Contains(separator, StringComparison.Ordinal) || line.Contains('"', StringComparison.Ordinal) ? $"\"{line.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : line;
    }
}
