using Byrelaw.Records.Sources;
using ExcelDataReader;

namespace Byrelaw.Records.Workbooks;

/// <summary>
/// Cells of a sheet that were made one. What stands in those over headings goes for each of them. Below the headings the first one holds it, and
/// of the others nobody can tell whether they say the same or nothing.
/// </summary>
/// <param name="joined">From which cell to which.</param>
internal sealed class JoinedCells(CellRange[] joined)
{
    // As many as a sheet of four thousand cows has cells in a thousand columns.
    private const long Most = 1 << 22;

    /// <summary>The headings, those over several rows one behind the other.</summary>
    /// <param name="rows">All rows of the sheet.</param>
    /// <param name="first">The first heading row, from 1.</param>
    /// <param name="last">The last one.</param>
    public string[] Headings(List<string[]> rows, int first, int last)
    {
        var over = Array.FindAll(joined, one => one.ToRow >= first - 1 && one.FromRow < last);
        var headings = new string[rows.Skip(first - 1).Take(last - first + 1).Concat(over.Select(one => rows[one.FromRow])).Max(row => row.Length)];
        Array.Fill(headings, "");
        for (var row = first - 1; row < last; row++)
        {
            for (var column = 0; column < headings.Length; column++)
            {
                headings[column] = $"{headings[column]} {Heading(over, rows, row, column, first - 1)}".Trim();
            }
        }

        return headings;
    }

    /// <summary>Marks what cannot be read below the headings; false where more cells are joined than any herd's sheet has.</summary>
    /// <param name="rows">All rows of the sheet, from its top.</param>
    /// <param name="headingRow">The last heading row, from 1.</param>
    /// <param name="columns">How many columns have headings.</param>
    public bool TryMark(List<string[]> rows, int headingRow, int columns)
    {
        var marked = 0L;
        foreach (var one in joined)
        {
            var (top, bottom, right) = (Math.Max(one.FromRow, headingRow), Math.Min(one.ToRow, rows.Count - 1), Math.Min(one.ToColumn, columns - 1));
            marked += Math.Max(0, (long)bottom - top + 1) * Math.Max(1, right - one.FromColumn + 1);
            if (marked > Most)
            {
                return false;
            }

            for (var row = top; row <= bottom; row++)
            {
                Mark(rows, row, one, right);
            }
        }

        return true;
    }

    private static void Mark(List<string[]> rows, int row, CellRange one, int right)
    {
        // A row in which nothing else stands is none.
        if (Array.TrueForAll(rows[row], cell => cell.Length == 0))
        {
            return;
        }

        for (var column = one.FromColumn; column <= right; column++)
        {
            if (row == one.FromRow && column == one.FromColumn)
            {
                continue;
            }

            if (column >= rows[row].Length)
            {
                var cells = rows[row];
                var length = cells.Length;
                Array.Resize(ref cells, column + 1);
                Array.Fill(cells, "", length, column + 1 - length);
                rows[row] = cells;
            }

            rows[row][column] = Unreadable.Of("a part of joined cells");
        }
    }

    /// <summary>A cell over several rows says itself once: in the first of them that is a heading row.</summary>
    private static string Heading(CellRange[] over, List<string[]> rows, int row, int column, int first)
    {
        var its = Array.Find(over, one => row >= one.FromRow && row <= one.ToRow && column >= one.FromColumn && column <= one.ToColumn);
        var from = its is null ? (Row: row, Column: column) : (Row: its.FromRow, Column: its.FromColumn);
        return (its is null || row == Math.Max(its.FromRow, first)) && from.Column < rows[from.Row].Length ? rows[from.Row][from.Column] : "";
    }
}
