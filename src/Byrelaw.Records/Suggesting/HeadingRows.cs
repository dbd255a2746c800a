using Byrelaw.Records.Sources;

namespace Byrelaw.Records.Suggesting;

/// <summary>
/// Finds the row of the headings below titles, dates of printing and rows that group columns: it names most of the columns in use, holds no number
/// and no date, and what it says stands nowhere below it. A row of data is none.
/// </summary>
internal static class HeadingRows
{
    private const int Furthest = 20;

    /// <summary>Where they stand; several rows where the lower one leaves columns without a name that the one above it names. Null where none can be told from data.</summary>
    /// <param name="rows">The rows of the file as they stand, with their numbers.</param>
    public static (int First, int Last)? Of(IReadOnlyList<(int Number, string[] Cells)> rows)
    {
        var width = rows.Count == 0 ? 0 : rows.Max(row => row.Cells.Length);
        var filled = new int[width];
        foreach (var (_, cells) in rows)
        {
            for (var column = 0; column < cells.Length; column++)
            {
                filled[column] += IsBlank(cells[column]) ? 0 : 1;
            }
        }

        for (var at = 0; at < rows.Count && rows[at].Number <= Furthest; at++)
        {
            Uncount(filled, rows[at].Cells);
            var used = filled.Count(count => count > 0);
            if (!IsLabels(rows, at) || 2 * Named(rows[at].Cells, filled) < used || used == 0)
            {
                continue;
            }

            // A row that groups columns may stand above the one that names each.
            if (at + 1 < rows.Count && rows[at + 1].Number == rows[at].Number + 1 && IsLabels(rows, at + 1) && Named(rows[at + 1].Cells, filled) > Named(rows[at].Cells, filled))
            {
                Uncount(filled, rows[++at].Cells);
            }

            return (NamesMore(rows, at, filled) ? rows[at].Number - 1 : rows[at].Number, rows[at].Number);
        }

        return null;
    }

    /// <summary>Whether a cell says a number, a date, or what animals go by.</summary>
    public static bool IsData(string cell)
    {
        var digits = cell.Count(char.IsAsciiDigit);
        return digits > 0 && (digits > cell.Count(char.IsLetter) || ColumnProfile.IsDate(cell));
    }

    private static bool IsBlank(string cell) => cell.Length == 0 || Unreadable.Is(cell);

    private static void Uncount(int[] filled, string[] cells)
    {
        for (var column = 0; column < cells.Length; column++)
        {
            filled[column] -= IsBlank(cells[column]) ? 0 : 1;
        }
    }

    /// <summary>How many of the columns that hold something below are named.</summary>
    private static int Named(string[] cells, int[] filled) => cells.Where((cell, column) => !IsBlank(cell) && filled[column] > 0).Distinct(StringComparer.Ordinal).Count();

    private static bool IsLabels(IReadOnlyList<(int Number, string[] Cells)> rows, int at)
    {
        var cells = rows[at].Cells;
        var (said, again) = (0, 0);
        for (var column = 0; column < cells.Length; column++)
        {
            if (IsBlank(cells[column]))
            {
                continue;
            }

            if (IsData(cells[column]))
            {
                return false;
            }

            said++;
            again += rows.Skip(at + 1).Any(row => column < row.Cells.Length && row.Cells[column] == cells[column]) ? 1 : 0;
        }

        // Headings that a printer repeats on each page say all of it again.
        return said > 0 && (again == 0 || (again == said && said > 1));
    }

    private static bool NamesMore(IReadOnlyList<(int Number, string[] Cells)> rows, int at, int[] filled)
    {
        if (at == 0 || rows[at - 1].Number != rows[at].Number - 1 || !IsLabels(rows, at - 1) || rows[at - 1].Cells.Where(cell => !IsBlank(cell)).Distinct(StringComparer.Ordinal).Count() < 2)
        {
            return false;
        }

        var (above, names) = (rows[at - 1].Cells, rows[at].Cells);
        return Enumerable.Range(0, above.Length).Any(column => filled[column] > 0 && !IsBlank(above[column]) && (column >= names.Length || IsBlank(names[column])));
    }
}
