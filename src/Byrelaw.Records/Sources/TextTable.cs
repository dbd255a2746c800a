namespace Byrelaw.Records.Sources;

/// <summary>Reads a text with a separator between cells (RFC 4180, but for the sign) into headings and rows.</summary>
internal static class TextTable
{
    private const int LongestCell = 64 << 10;
    private const string TooLong = "a cell of this row is longer than 64 kB";
    private const int LongestRow = 1 << 20;
    private const int MostColumns = 4096;

    // What of a row beyond all bounds is shown.
    private const int StartOfRow = 100;

    /// <summary>The table; null where the text has no heading row, or more headings than any herd's table.</summary>
    /// <param name="shown">The file, as messages name it.</param>
    /// <param name="text">All of it.</param>
    /// <param name="source">What the farm says of it.</param>
    /// <param name="exceeded">What it has too much of; null where it keeps within the bounds.</param>
    public static SourceTable? Read(string shown, string text, RecordSource source, out string? exceeded)
    {
        var lines = Lines(text);
        var (first, last) = source.HeadingRows;
        exceeded = null;
        if (lines.Count < last)
        {
            return null;
        }

        var pool = new CellPool();
        string[] headings = [];
        var (at, headingText) = (first - 1, "");
        for (var row = first; row <= last && at < lines.Count; row++)
        {
            if (lines[at].Length > LongestRow)
            {
                exceeded = "its heading row is longer than 1 MB";
                return null;
            }

            var line = Row(text, lines, ref at, source.Separator, cells: 0);
            headings = Joined(headings, Cells(line, source.Separator, pool, out _));
            headingText = line.ToString();
        }

        if (headings.Length > MostColumns)
        {
            exceeded = $"it has more than {MostColumns} columns";
            return null;
        }

        var headingRow = at;
        var rows = new List<SourceRow>(Math.Max(0, lines.Count - at));
        while (at < lines.Count)
        {
            var number = at + 1;
            var line = Row(text, lines, ref at, source.Separator, headings.Length);
            if (line.Length > LongestRow)
            {
                rows.Add(new SourceRow(number, [], line[..StartOfRow]) { Flaw = "this row is longer than 1 MB" });
                continue;
            }

            var cells = Cells(line, source.Separator, pool, out var flaw);
            var row = new SourceRow(number, cells, line) { IsCut = number > 1 && !lines[at - 1].IsEnded };
            if (!row.IsBlank)
            {
                rows.Add(row with { Flaw = flaw ?? (cells.Length == headings.Length ? null : $"this row has {cells.Length} cells where the headings have {headings.Length}") });
            }
        }

        return headings.Length == 0 || Array.TrueForAll(headings, heading => heading.Length == 0) ? null : new SourceTable(shown, headings, headingText, headingRow, rows);
    }

    /// <summary>The first rows as they stand, with the lines at which they start; rows that go over several lines too.</summary>
    /// <param name="text">All of it.</param>
    /// <param name="separator">What stands between cells.</param>
    /// <param name="most">So many rows are looked at.</param>
    public static List<(int Number, string[] Cells)> FirstRows(string text, char separator, int most)
    {
        var (lines, pool, rows) = (Lines(text), new CellPool(), new List<(int, string[])>());
        for (var at = 0; at < lines.Count && rows.Count < most;)
        {
            var number = at + 1;
            var line = Row(text, lines, ref at, separator, cells: 0);
            if (line.Length <= LongestRow && Cells(line, separator, pool, out _) is var cells && Array.Exists(cells, cell => cell.Length > 0))
            {
                rows.Add((number, cells));
            }
        }

        return rows;
    }

    /// <summary>Headings with those of a further row below them.</summary>
    private static string[] Joined(string[] headings, string[] more) =>
        [.. Enumerable.Range(0, Math.Max(headings.Length, more.Length)).Select(column => $"{headings.ElementAtOrDefault(column)} {more.ElementAtOrDefault(column)}".Trim())];

    /// <summary>The row that starts on a line, on one line: it may go over several. Goes to the line behind it.</summary>
    private static ReadOnlyMemory<char> Row(string text, List<(int Start, int Length, bool IsEnded)> lines, ref int at, char separator, int cells)
    {
        var (start, length, _) = lines[at++];
        if (length > LongestRow || text.AsSpan(start, length).Count('"') % 2 == 0
            || RowOverLines.Of(text.AsSpan(start), separator, cells, isToTheEnd: true, out var whole) != OverLines.Yes)
        {
            return text.AsMemory(start, length);
        }

        while (at < lines.Count && lines[at].Start < start + whole)
        {
            at++;
        }

        return text.Substring(start, whole).ReplaceLineEndings(" ").AsMemory();
    }

    private static List<(int Start, int Length, bool IsEnded)> Lines(string text)
    {
        var lines = new List<(int, int, bool)>();
        for (var start = 0; start < text.Length;)
        {
            var length = text.AsSpan(start).IndexOfAny('\n', '\r');
            if (length < 0)
            {
                lines.Add((start, text.Length - start, false));
                break;
            }

            lines.Add((start, length, true));
            start += length + (text.AsSpan(start + length).StartsWith("\r\n") ? 2 : 1);
        }

        return lines;
    }

    private static string[] Cells(ReadOnlyMemory<char> line, char separator, CellPool pool, out string? flaw)
    {
        flaw = null;
        return line.Span.Contains('"') ? Quoted(line.ToString(), separator, ref flaw) : Plain(line.Span, separator, pool, ref flaw);
    }

    private static string[] Plain(ReadOnlySpan<char> line, char separator, CellPool pool, ref string? flaw)
    {
        var cells = new string[line.Count(separator) + 1];
        for (var place = 0; place < cells.Length; place++)
        {
            var end = line.IndexOf(separator);
            var cell = end < 0 ? line : line[..end];
            flaw ??= cell.Length > LongestCell ? TooLong : null;
            cells[place] = pool.Of(cell.Trim());
            line = end < 0 ? [] : line[(end + 1)..];
        }

        return cells;
    }

    private static string[] Quoted(string line, char separator, ref string? flaw)
    {
        var cells = CellSplitter.Split(line, separator);
        foreach (var cell in cells)
        {
            flaw ??= cell.Flaw == CellFlaw.NeverClosed ? "a quotation mark of this row is never closed, or only after what may be further rows"
                : cell.Flaw != CellFlaw.None ? "a quotation mark of this row stands where none can" : cell.Length > LongestCell ? TooLong : null;
        }

        return [.. cells.Select(cell => cell.Value)];
    }
}
