namespace Byrelaw.Reporting.Html;

/// <summary>Puts words into a string of a style sheet.</summary>
internal static class CssText
{
    /// <summary>Every sign that is no letter, no digit and no blank is written as its number and a blank that ends it (CSS Syntax Module Level 3, 4.3.7): none of them ends the string, or the style sheet.</summary>
    public static string Of(string words)
    {
        var text = new StringBuilder(words.Length + 16);
        foreach (var rune in PlainText.Clean(words).EnumerateRunes())
        {
            _ = Rune.IsLetterOrDigit(rune) || rune.Value == ' ' ? text.Append(rune) : text.Append(CultureInfo.InvariantCulture, $"\\{rune.Value:x} ");
        }

        return text.ToString();
    }
}
