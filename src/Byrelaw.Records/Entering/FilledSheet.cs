namespace Byrelaw.Records.Entering;

/// <summary>A sheet as it comes back: rows under headings, in a file of comma-separated text or in a workbook.</summary>
public sealed class FilledSheet
{
    private static readonly string[] Required = ["animal", "date"];

    private static readonly char[] Separators = [',', ';', '\t'];

    private FilledSheet(SourceTable table, bool isWorkbook, byte[] bytes) => (Table, IsWorkbook, Bytes) = (table, isWorkbook, bytes);

    /// <summary>As it stands on disk.</summary>
    public ReadOnlyMemory<byte> Bytes { get; }

    /// <summary>Whether it is a workbook.</summary>
    public bool IsWorkbook { get; }

    /// <summary>What stands under <c>sheet</c>, in the first row that says so; null for nothing: then it is somebody's own file.</summary>
    public string? Number => Table.Rows.Select(row => Cell(row, Table.Find("sheet"))).FirstOrDefault(cell => cell.Length > 0);

    /// <summary>The rows.</summary>
    internal SourceTable Table { get; }

    /// <summary>Reads one; null, with what is wrong, where it is none.</summary>
    /// <param name="shown">The file, as messages name it.</param>
    /// <param name="bytes">As they stand on disk.</param>
    /// <param name="problem">What is wrong.</param>
    public static FilledSheet? Read(string shown, byte[] bytes, out Diagnostic? problem)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        var isWorkbook = WorkbookTable.Is(bytes);
        var source = new RecordSource(shown, SourceRows.Events, default);
        SourceTable? table;
        if (isWorkbook)
        {
            table = WorkbookTable.Read(shown, bytes, source, WorkbookBounds.Usual, out problem);
        }
        else
        {
            var text = SourceText.Of(bytes, null, SourceReader.MostBytes, out _);
            table = text is null ? null : TextTable.Read(shown, text, source with { Separator = SeparatorOf(text) }, out _);
            problem = text is null ? SheetProblems.NotText(shown) : table is null ? SheetProblems.NoHeadings(shown) : null;
        }

        if (table is null)
        {
            return null;
        }

        problem = Required.Where(heading => table.Find(heading) < 0).ToList() is { Count: > 0 } missing ? SheetProblems.WithoutColumns(table, missing) : null;
        problem ??= table.Find("kind") >= 0 ? SheetProblems.AreRecords(table) : null;
        return problem is null ? new FilledSheet(table, isWorkbook, bytes) : null;
    }

    /// <summary>What a cell says. A number that begins with a sign is written with an apostrophe before it, so that no spreadsheet takes it for a sum.</summary>
    internal static string Cell(SourceRow row, int column) => TranslatedSource.Text(row, column) is var text && column < 0 ? "" : text is ['\'', '=' or '+' or '-' or '@', ..] ? text[1..] : text;

    /// <summary>Spreadsheets write what their country does.</summary>
    private static char SeparatorOf(string text)
    {
        var heading = text.AsSpan(0, text.AsSpan().IndexOfAny('\r', '\n') is >= 0 and var end ? end : text.Length).ToString();
        return Separators.MaxBy(separator => heading.Count(sign => sign == separator));
    }
}
