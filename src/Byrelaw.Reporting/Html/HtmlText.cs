namespace Byrelaw.Reporting.Html;

/// <summary>Puts words into HTML, as text or as the value of an attribute in double quotes.</summary>
public static class HtmlText
{
    /// <summary>Escaped.</summary>
    public static string Of(string words)
    {
        var text = new StringBuilder(words.Length + 8);
        foreach (var c in PlainText.Clean(words))
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
