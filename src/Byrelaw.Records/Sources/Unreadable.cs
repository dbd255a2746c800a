namespace Byrelaw.Records.Sources;

/// <summary>
/// How a cell that does not fit what the farm says of its source is handed on: so that nothing that reads the landed form can take
/// it for a day, a number, an animal or a word.
/// </summary>
internal static class Unreadable
{
    private const string Mark = "?";

    /// <summary>The cell, marked.</summary>
    public static string Of(string cell) => Mark + cell;

    /// <summary>The cell as it stands in its source.</summary>
    public static string Unmarked(string cell) => cell.StartsWith(Mark, StringComparison.Ordinal) ? cell[Mark.Length..] : cell;
}
