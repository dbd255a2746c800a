namespace Byrelaw.Reporting.Terminal;

/// <summary>Lays out a table for a terminal: columns as wide as their widest cell, and headings where there are any.</summary>
internal static class TerminalTable
{
    /// <summary>Its lines, without what they stand in by.</summary>
    public static List<string> Lines(Table table, Ink ink)
    {
        var rows = table.Rows.ToList();
        if (table.Columns.Any(column => column.Heading.Length > 0))
        {
            rows.Insert(0, [.. table.Columns.Select(column => (Wording)column.Heading)]);
        }

        var widths = table.Columns.Select((column, at) =>
            Math.Max(column.Least, Math.Min(column.Most, rows.Select(row => row[at].ToString().Length).DefaultIfEmpty(0).Max()))).ToList();
        return rows.ConvertAll(row => Line(table, row, widths, ink));
    }

    private static string Line(Table table, IReadOnlyList<Wording> row, List<int> widths, Ink ink)
    {
        var text = new StringBuilder();
        for (var at = 0; at < row.Count; at++)
        {
            var column = table.Columns[at];
            var fill = new string(' ', Math.Max(0, widths[at] - row[at].ToString().Length));
            text.Append(' ', at == 0 ? 0 : column.Before);
            _ = column.IsNumber ? text.Append(fill).Append(TerminalWriter.Styled(row[at], ink)) : text.Append(TerminalWriter.Styled(row[at], ink)).Append(fill);
        }

        return text.ToString();
    }
}
