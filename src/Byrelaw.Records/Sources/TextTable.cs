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

        exceeded = lines.Take(last).Skip(first - 1).Any(line => line.Text.Length > LongestRow) ? "its heading row is longer than 1 MB" : null;
        if (exceeded is not null)
        {
            return null;
        }

        var pool = new CellPool();
        var headings = Cells(lines[first - 1].Text, source.Separator, pool, out _);
        for (var row = first + 1; row <= last; row++)
        {
            var more = Cells(lines[row - 1].Text, source.Separator, pool, out _);
            Array.Resize(ref headings, Math.Max(headings.Length, more.Length));
            for (var column = 0; column < headings.Length; column++)
            {
                headings[column] ??= "";
            }

            for (var column = 0; column < more.Length; column++)
            {
                headings[column] = $"{headings[column]} {more[column]}".Trim();
            }
        }

        if (headings.Length > MostColumns)
        {
            exceeded = $"it has more than {MostColumns} columns";
            return null;
        }

        var rows = new List<SourceRow>(Math.Max(0, lines.Count - last));
        for (var at = last; at < lines.Count; at++)
        {
            var (line, isEnded) = lines[at];
            if (line.Length > LongestRow)
            {
                rows.Add(new SourceRow(at + 1, [], line[..StartOfRow]) { Flaw = "this row is longer than 1 MB" });
                continue;
            }

            var cells = Cells(line, source.Separator, pool, out var flaw);
            var row = new SourceRow(at + 1, cells, line) { IsCut = !isEnded && at > 0 };
            if (!row.IsBlank)
            {
                rows.Add(row with { Flaw = flaw ?? (cells.Length == headings.Length ? null : $"this row has {cells.Length} cells where the headings have {headings.Length}") });
            }
        }

        return headings.Length == 0 || Array.TrueForAll(headings, heading => heading.Length == 0) ? null : new SourceTable(shown, headings, lines[last - 1].Text.ToString(), last, rows);
    }

    private static List<(ReadOnlyMemory<char> Text, bool IsEnded)> Lines(string text)
    {
        var lines = new List<(ReadOnlyMemory<char>, bool)>();
        for (var start = 0; start < text.Length;)
        {
            var length = text.AsSpan(start).IndexOfAny('\n', '\r');
            if (length < 0)
            {
                lines.Add((text.AsMemory(start), false));
                break;
            }

            lines.Add((text.AsMemory(start, length), true));
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
            flaw ??= cell.Flaw != CellFlaw.None ? "a quotation mark of this row stands where none can" : cell.Length > LongestCell ? TooLong : null;
        }

        return [.. cells.Select(cell => cell.Value)];
    }
}
