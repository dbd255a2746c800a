namespace Byrelaw.Language.Diagnostics;

/// <summary>Makes text from files safe to show anywhere: on a terminal, in a table, in a page.</summary>
public static class PlainText
{
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
            else if (IsBlank(c))
            {
                if (text.Length > 0 && text[^1] != ' ')
                {
                    text.Append(' ');
                }
            }
            else
            {
                text.Append(char.IsSurrogate(c) || TurnsDirection(c) || c is '\uFFFE' or '\uFFFF' ? '\uFFFD' : c);
            }
        }

        return text.ToString().TrimEnd(' ');
    }

    /// <summary>The same of words that stand between others: a blank at either end stays.</summary>
    public static string CleanWithin(string words)
    {
        var clean = Clean(words);
        return clean.Length == 0 ? words.Length == 0 ? "" : " " : $"{(IsBlank(words[0]) ? " " : "")}{clean}{(IsBlank(words[^1]) ? " " : "")}";
    }

    /// <summary>Whether a sign turns the direction of writing, so that a line reads otherwise than it is.</summary>
    public static bool TurnsDirection(char sign) => UnseenSigns.TurnsDirection(sign);

    private static bool IsBlank(char c) => char.IsWhiteSpace(c) || char.IsControl(c);
}
