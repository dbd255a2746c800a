namespace Byrelaw.Reporting.Markdown;

/// <summary>Puts words into Markdown so that they mean nothing but themselves.</summary>
public static class MarkdownText
{
    /// <summary>Characters that could start markup anywhere in a line.</summary>
    private const string Markup = "\\`*_[]<>|~&$^";

    /// <summary>Characters that mean something only at a line's start.</summary>
    private const string LineStart = "#+-=:!>";

    /// <summary>Words as they stand, on one line.</summary>
    public static string Of(string words) => Escape(words, startsLine: true);

    /// <summary>Words that follow others on their line.</summary>
    public static string After(string words) => Escape(words, startsLine: false);

    /// <summary>Words in bold; empty for none.</summary>
    public static string Bold(string words) => PlainText.Clean(words).Length == 0 ? "" : $"**{Of(words)}**";

    /// <summary>Words in italics; empty for none.</summary>
    public static string Italic(string words) => PlainText.Clean(words).Length == 0 ? "" : $"*{Of(words)}*";

    /// <summary>A link to a file of this report.</summary>
    /// <param name="markdown">What is shown, Markdown already.</param>
    /// <param name="target">Made by <see cref="Files.FileNames"/>: no blanks, brackets or quotes.</param>
    public static string Link(string markdown, string target) => $"[{markdown}]({target})";

    private static string Escape(string words, bool startsLine)
    {
        var clean = PlainText.Clean(words);
        var text = new StringBuilder(clean.Length + 8);
        for (var i = 0; i < clean.Length; i++)
        {
            var c = clean[i];
            if (Markup.Contains(c) || (startsLine && ((i == 0 && LineStart.Contains(c)) || IsListNumberEnd(clean, i))))
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
