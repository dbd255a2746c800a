using System.Text.RegularExpressions;

namespace Byrelaw.Records.Cells;

/// <summary>Guesses what number a person meant, to say how to write it. The guess is only ever shown, never used.</summary>
internal static partial class NumberAdvice
{
    /// <summary>How to mend the cell; null where nothing better can be said.</summary>
    public static string? For(string text)
    {
        if (!WithComma().IsMatch(text))
        {
            return null;
        }

        var withPoint = text.Replace(',', '.');
        return text.Length - text.IndexOf(',', StringComparison.Ordinal) == 4
            ? $"write `{withPoint}` or `{text.Replace(",", "", StringComparison.Ordinal)}`, whichever is meant"
            : $"write `{withPoint}`, with a point";
    }

    [GeneratedRegex(@"^[<>]?-?[0-9]+,[0-9]+$", RegexOptions.CultureInvariant)]
    private static partial Regex WithComma();
}
