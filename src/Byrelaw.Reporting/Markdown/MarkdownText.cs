using System.Globalization;
using System.Text;

namespace Byrelaw.Reporting.Markdown;

/// <summary>Puts words into Markdown so that they mean nothing but themselves.</summary>
public static class MarkdownText
{
    /// <summary>Characters that could start markup anywhere in a line.</summary>
    private const string Markup = "\\`*_[]<>|~&$^";

    /// <summary>Characters that mean something only at a line's start.</summary>
    private const string LineStart = "#+-=:!>";

    /// <summary>Words as they stand, on one line.</summary>
    public static string Of(string words)
    {
        var clean = Clean(words);
        var text = new StringBuilder(clean.Length + 8);
        for (var i = 0; i < clean.Length; i++)
        {
            var c = clean[i];
            if (Markup.Contains(c) || (i == 0 && LineStart.Contains(c)) || IsListNumberEnd(clean, i))
            {
                text.Append('\\');
            }

            text.Append(c);
        }

        return text.ToString();
    }

    /// <summary>Words in bold; empty for none.</summary>
    public static string Bold(string words) => Clean(words).Length == 0 ? "" : $"**{Of(words)}**";

    /// <summary>Words in italics; empty for none.</summary>
    public static string Italic(string words) => Clean(words).Length == 0 ? "" : $"*{Of(words)}*";

    /// <summary>A link to a file of this report.</summary>
    /// <param name="markdown">What is shown, Markdown already.</param>
    /// <param name="target">Made by <see cref="Files.FileNames"/>: no blanks, brackets or quotes.</param>
    public static string Link(string markdown, string target) => $"[{markdown}]({target})";

    /// <summary>
    /// One line of printable text: control characters, line ends and runs of blanks become one blank;
    /// halves of broken characters and marks that turn the direction of writing become U+FFFD.
    /// </summary>
    public static string Clean(string words)
    {
        var text = new StringBuilder(words.Length);
        for (var i = 0; i < words.Length; i++)
        {
            var c = words[i];
            if (char.IsHighSurrogate(c) && i + 1 < words.Length && char.IsLowSurrogate(words[i + 1]))
            {
                text.Append(c).Append(words[++i]);
            }
            else if (char.IsWhiteSpace(c) || char.IsControl(c))
            {
                if (text.Length > 0 && text[^1] != ' ')
                {
                    text.Append(' ');
                }
            }
            else
            {
                text.Append(char.IsSurrogate(c) || TurnsDirection(c) ? '\uFFFD' : c);
            }
        }

        return text.ToString().TrimEnd(' ');
    }

    private static bool TurnsDirection(char c) =>
        c is (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069') or '\u200E' or '\u200F' or '\uFEFF'
        || char.GetUnicodeCategory(c) is UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator;

    /// <summary>Whether this is the dot or bracket of <c>12.</c> at the start, which would open a numbered list.</summary>
    private static bool IsListNumberEnd(string text, int at) =>
        text[at] is '.' or ')' && at is > 0 and < 10 && text.AsSpan(0, at).IndexOfAnyExceptInRange('0', '9') < 0;
}
