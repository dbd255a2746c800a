namespace Byrelaw.LanguageServer.Answers;

/// <summary>Writes what people wrote so that Markdown (CommonMark 0.31) shows it as it is.</summary>
internal static class Markdown
{
    /// <summary>A text within a paragraph.</summary>
    public static string Text(string text)
    {
        var escaped = new StringBuilder(text.Length);
        foreach (var c in text)
        {
            if (c is '\\' or '`' or '*' or '_' or '[' or ']' or '<' or '>' or '#' or '&' or '!' or '|' or '~')
            {
                escaped.Append('\\');
            }

            escaped.Append(c);
        }

        return escaped.ToString();
    }

    /// <summary>Lines of a rule file.</summary>
    public static string Rules(string text) => $"````byre\n{text.Replace("````", "'''", StringComparison.Ordinal)}\n````";
}
