namespace Byrelaw.Reporting.Html;

/// <summary>Puts words into HTML, as text or as the value of an attribute in double quotes.</summary>
public static class HtmlText
{
    private static readonly System.Buffers.SearchValues<char> Markup = System.Buffers.SearchValues.Create("&<>\"'");

    /// <summary>Escaped, on one line.</summary>
    public static string Of(string words) => Escaped(PlainText.Clean(words));

    /// <summary>Words that are clean already, escaped.</summary>
    internal static string Escaped(string clean)
    {
        if (!clean.AsSpan().ContainsAny(Markup))
        {
            return clean;
        }

        var text = new StringBuilder(clean.Length + 8);
        foreach (var c in clean)
        {
            _ = c switch
            {
                '&' => text.Append("&amp;"),
                '<' => text.Append("&lt;"),
                '>' => text.Append("&gt;"),
                '"' => text.Append("&quot;"),
                '\'' => text.Append("&#39;"),
                _ => text.Append(c),
            };
        }

        return text.ToString();
    }
}
