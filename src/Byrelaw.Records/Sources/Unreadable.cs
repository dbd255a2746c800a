namespace Byrelaw.Records.Sources;

/// <summary>
/// How a cell that does not fit what the farm says of its source is handed on: so that nothing that reads the landed form can take
/// it for a day, a number, an animal or a word.
/// </summary>
internal static class Unreadable
{
    // A sign of the private use area, which no program that people use writes; and a question mark, so that it is no mob's name either.
    private const string Mark = "\uE000?";

    /// <summary>Stands where a column is not there: that is told once, of the column.</summary>
    public const string NotThere = Mark + "\uE001";

    private const char Among = '\uE002';

    // So many with one tag have a filler in its column: such a row may be anybody's.
    private const int MostAmong = 30;

    /// <summary>The cell, marked.</summary>
    public static string Of(string cell) => Is(cell) ? cell : Mark + cell;

    /// <summary>What is several animals', marked, with their numbers.</summary>
    public static string Of(string cell, IReadOnlyCollection<string> numbers) =>
        numbers.Count > MostAmong || numbers.Any(number => number.Contains(Among, StringComparison.Ordinal)) ? Of(cell) : $"{Of(cell)}{Among}{string.Join(Among, numbers)}";

    /// <summary>Whether a cell is marked.</summary>
    public static bool Is(string cell) => cell.StartsWith(Mark, StringComparison.Ordinal);

    /// <summary>The same of a cell's bytes.</summary>
    public static bool Is(ReadOnlySpan<byte> cell) => cell.StartsWith("\uE000?"u8);

    /// <summary>The cell as it stands in its source.</summary>
    public static string Unmarked(string cell)
    {
        if (!Is(cell))
        {
            return cell;
        }

        var end = cell.IndexOf(Among, StringComparison.Ordinal);
        return cell[Mark.Length..(end < 0 ? cell.Length : end)];
    }

    /// <summary>The numbers of the animals whose it may be; none where it may be anybody's.</summary>
    public static string[] NumbersIn(string cell) =>
        Is(cell) && cell.IndexOf(Among, StringComparison.Ordinal) is >= 0 and var at ? cell[(at + 1)..].Split(Among) : [];
}
