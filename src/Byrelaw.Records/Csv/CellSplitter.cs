namespace Byrelaw.Records.Csv;

/// <summary>
/// Splits one line into cells by RFC 4180, for headings, and for rows that are wrong: it finds the
/// places to point at and saves the cells before the bad one.
/// </summary>
internal static class CellSplitter
{
    private const int Usual = 12;

    /// <summary>The cells up to and with the first one that is badly quoted; what follows that one is not split.</summary>
    public static List<Cell> Split(string line, char separator = ',')
    {
        var cells = new List<Cell>(Usual);
        var at = 0;
        while (true)
        {
            var cell = At(line, at, separator);
            cells.Add(cell);
            at = cell.Start + cell.Length;
            if (cell.Flaw != CellFlaw.None || at >= line.Length)
            {
                return cells;
            }

            at++;
            if (at == line.Length)
            {
                cells.Add(new Cell(at, 0, "", CellFlaw.None));
                return cells;
            }
        }
    }

    private static Cell At(string line, int start, char separator) =>
        start < line.Length && line[start] == '"' ? Quoted(line, start, separator) : Plain(line, start, separator);

    private static Cell Plain(string line, int start, char separator)
    {
        var comma = line.IndexOf(separator, start);
        var end = comma < 0 ? line.Length : comma;
        var text = line[start..end];
        return new Cell(start, end - start, text.Trim(), text.Contains('"') ? CellFlaw.QuoteInside : CellFlaw.None);
    }

    private static Cell Quoted(string line, int start, char separator)
    {
        for (var i = start + 1; i < line.Length; i++)
        {
            if (line[i] != '"')
            {
                continue;
            }

            if (i + 1 < line.Length && line[i + 1] == '"')
            {
                i++;
                continue;
            }

            var comma = line.IndexOf(separator, i);
            var end = comma < 0 ? line.Length : comma;
            var value = line[(start + 1)..i].Replace("\"\"", "\"", StringComparison.Ordinal).Trim();
            return new Cell(start, end - start, value, end == i + 1 ? CellFlaw.None : CellFlaw.TextAfterQuote);
        }

        return new Cell(start, line.Length - start, line[(start + 1)..], CellFlaw.NeverClosed);
    }
}
