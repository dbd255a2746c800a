using System.Text.RegularExpressions;

namespace Byrelaw.Records.Events;

/// <summary>What a row of <c>events.csv</c> that falls apart may have been, beyond what can be read of it.</summary>
internal static partial class BrokenRow
{
    /// <summary>Whether the file ends within this row, so that nobody knows what stood below: its last row is short and has no line
    /// end, or a quotation mark is never closed.</summary>
    public static bool EndsTheFile(RowText row, int cellCount) =>
        (row.IsLastWithoutEnd && row.Cells.Count < cellCount) || row.Cells.Any(cell => cell.Flaw == CellFlaw.NeverClosed);

    /// <summary>
    /// The days in a row that two rows were glued into by a lost line end: one with too many cells, of which an extra one holds a date
    /// or the name of a kind. Days are looked for anywhere in its text, for the end of one row sticks to the start of the next. No day
    /// at all where none is found, or fewer than kinds: it may be of any. Null for every other row.
    /// </summary>
    public static IReadOnlyList<int>? DaysOfTwoInOne(RowText row, int cellCount, Func<string, bool> isKind)
    {
        // Where quotation marks are wrong, the cells behind are cut as they come.
        string[] cells = row.Cells.All(cell => cell.Flaw == CellFlaw.None)
            ? [.. row.Cells.Select(cell => cell.Value)]
            : [.. row.Text.Split(',').Select(cell => cell.Trim(' ', '\t', '"'))];
        if (!cells.Skip(cellCount).Any(cell => isKind(cell) || Days(cell).Count > 0))
        {
            return null;
        }

        var days = Days(row.Text);
        return days.Count < cells.Count(isKind) ? [] : days;
    }

    private static List<int> Days(string text)
    {
        var days = new List<int>();
        foreach (Match match in IsoDate().Matches(text))
        {
            if (DateCell.TryRead(Encoding.UTF8.GetBytes(match.Value), out var day))
            {
                days.Add(day);
            }
        }

        return days;
    }

    [GeneratedRegex(@"(?<![0-9])[0-9]{4}-[0-9]{2}-[0-9]{2}(?![0-9])")]
    private static partial Regex IsoDate();
}
