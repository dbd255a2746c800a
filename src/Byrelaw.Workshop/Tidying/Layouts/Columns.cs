namespace Byrelaw.Workshop.Tidying.Layouts;

/// <summary>Lines up declarations that follow each other.</summary>
internal static class Columns
{
    private const int Gap = 2;
    private const int GapAfterComma = 1;

    /// <summary>A line for each row.</summary>
    public static List<string> Align(IReadOnlyList<Row> rows)
    {
        var first = rows.Where(row => row.Cells.Length > 0).Select(row => Room(Start(row))).DefaultIfEmpty().Max();
        var others = rows.GroupBy(row => row.Head, StringComparer.Ordinal).ToDictionary(group => group.Key, Widths, StringComparer.Ordinal);
        return [.. rows.Select(row => Line(row, [first, .. others[row.Head]]))];
    }

    /// <summary>A column is as wide as its widest cell that another one follows: what ends a line needs no room.</summary>
    private static int[] Widths(IEnumerable<Row> rows)
    {
        var widths = new int[rows.Max(row => row.Cells.Length)];
        foreach (var row in rows)
        {
            for (var i = 0; i < row.Cells.Length - 1; i++)
            {
                widths[i] = Math.Max(widths[i], Room(row.Cells[i]));
            }
        }

        return widths;
    }

    private static string Line(Row row, int[] widths)
    {
        string[] cells = [Start(row), .. row.Cells];
        var padded = cells.SkipLast(1).Select((cell, i) => cell + new string(' ', widths[i] - DisplayWidth.Of(cell)));
        return string.Concat(padded) + cells[^1];
    }

    private static string Start(Row row) => $"{row.Head} {row.Name}";

    private static int Room(string cell) => cell.Length == 0 ? 0 : DisplayWidth.Of(cell) + (cell.EndsWith(',') ? GapAfterComma : Gap);
}
