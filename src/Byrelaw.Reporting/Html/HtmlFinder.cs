namespace Byrelaw.Reporting.Html;

/// <summary>Writes what finds an animal. It is hidden until the script is there: without one nothing is to be typed in vain.</summary>
internal static class HtmlFinder
{
    public static void Write(StringBuilder html, Finder finder)
    {
        html.Append("<form class=\"find\" role=\"search\" aria-label=\"Find an animal\" hidden=\"hidden\"><label for=\"num\">Number or tag</label><input id=\"num\" autocomplete=\"off\" /><output aria-live=\"polite\"></output><div class=\"chips\">");
        foreach (var button in finder.Buttons)
        {
            html.Append("<button class=\"chip\" type=\"button\" aria-pressed=\"false\" data-k=\"").Append(KeyOf(button.Key)).Append("\" data-v=\"").Text(button.Answer is { } answer ? HtmlWords.ClassOf(answer) : button.Value).Append("\">").Text(button.Words).Append("</button>");
        }

        html.Append("<button class=\"chip\" type=\"button\" aria-pressed=\"false\" data-picture=\"\">Picture only</button></div></form>\n<p class=\"cut\"></p>\n");
    }

    /// <summary>The attribute of a row that a button looks at.</summary>
    private static string KeyOf(FinderKey key) => key switch
    {
        FinderKey.Answer => "a",
        FinderKey.InCalf => "d",
        _ => "m",
    };
}
