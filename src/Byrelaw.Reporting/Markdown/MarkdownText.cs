namespace Byrelaw.Reporting.Markdown;

/// <summary>Puts words into Markdown so that they mean nothing but themselves.</summary>
public static class MarkdownText
{
    /// <summary>Characters that could start markup anywhere in a line.</summary>
    private const string Markup = "\\`*_[]<>|~&$^";

    /// <summary>Characters that mean something only at a line's start.</summary>
    private const string LineStart = "#+-=:!>";

    /// <summary>Words as they stand, on one line.</summary>
    public static string Of(string words) => Escaped(PlainText.Clean(words), startsLine: true);

    /// <summary>Some words of a line.</summary>
    /// <param name="clean">Made clean already.</param>
    /// <param name="startsLine">Whether they may open a line, where more signs mean something.</param>
    /// <param name="isLink">Whether they are shown for a link: then no reader makes a link of its own of a file's name in them.</param>
    public static string Escaped(string clean, bool startsLine, bool isLink = false)
    {
        var text = new StringBuilder(clean.Length + 8);
        for (var i = 0; i < clean.Length; i++)
        {
            var c = clean[i];
            if (Markup.Contains(c) || (startsLine && ((i == 0 && LineStart.Contains(c)) || IsListNumberEnd(clean, i)))
                || (isLink && c == '.' && i + 1 < clean.Length && char.IsLetter(clean[i + 1])))
            {
                text.Append('\\');
            }

            text.Append(c);
        }

        return text.ToString();
    }

    /// <summary>Whether this is the dot or bracket of <c>12.</c> at the start, which would open a numbered list.</summary>
    private static bool IsListNumberEnd(string text, int at) =>
        text[at] is '.' or ')' && at is > 0 and < 10 && text.AsSpan(0, at).IndexOfAnyExceptInRange('0', '9') < 0
        && (at + 1 == text.Length || text[at + 1] == ' ');
}
