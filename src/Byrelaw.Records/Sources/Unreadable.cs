namespace Byrelaw.Records.Sources;

/// <summary>
/// How a cell that does not fit what the farm says of its source is handed on: so that nothing that reads the landed form can take
/// it for a day, a number, an animal or a word.
/// </summary>
internal static class Unreadable
{
    // A sign of the private use area, which no program that people use writes; and a question mark, so that it is no mob's name either.
    private const string Mark = "\uE000?";

    /// <summary>The cell, marked.</summary>
    public static string Of(string cell) => Is(cell) ? cell : Mark + cell;

    /// <summary>Whether a cell is marked.</summary>
    public static bool Is(string cell) => cell.StartsWith(Mark, StringComparison.Ordinal);

    /// <summary>The cell as it stands in its source.</summary>
    public static string Unmarked(string cell) => Is(cell) ? cell[Mark.Length..] : cell;
}
