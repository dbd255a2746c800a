namespace Byrelaw.Records.Suggesting;

/// <summary>Rows of sums at the end of people's tables, by the word that stands in them: common practice, no source.</summary>
internal static class SumRows
{
    /// <summary>More than so many rows are none of sums.</summary>
    private const int Most = 3;

    private static readonly FrozenSet<string> Words = new[] { "total", "totals", "sum", "sums", "grand total", "average", "averages", "mean", "count" }.ToFrozenSet(StringComparer.Ordinal);

    /// <summary>The columns and texts by which such rows can be left out.</summary>
    public static IReadOnlyList<(int Column, string Text)> Of(SourceTable table)
    {
        var found = new List<(int Column, string Text)>();
        foreach (var row in table.Rows)
        {
            var column = row.Flaw is null ? Array.FindIndex(row.Cells, cell => Words.Contains(NameFolding.Fold(cell).TrimEnd(':', '.'))) : -1;
            if (column >= 0 && column < table.Headings.Count && table.Headings[column].Length > 0 && !found.Contains((column, row.Cells[column])))
            {
                found.Add((column, row.Cells[column]));
            }
        }

        return found.Count > Most || found.Exists(sum => table.Rows.Count(row => row[sum.Column] == sum.Text) > Most) ? [] : found;
    }
}
