namespace Byrelaw.Reporting.Html;

/// <summary>Makes a page's HTML: one file that needs nothing else, no network and no script.</summary>
public static class HtmlDocument
{
    /// <summary>The whole document.</summary>
    public static string Of(Page page)
    {
        var html = new StringBuilder();
        html.Append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\" />\n")
            .Append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\" />\n")
            .Append("<meta name=\"color-scheme\" content=\"light dark\" />\n")
            .Append("<title>").Append(HtmlText.Of(page.Title)).Append("</title>\n")
            .Append("<style>\n").Append(StyleSheet.Text).Append("</style>\n</head>\n<body>\n")
            .Append("<a class=\"skip\" href=\"#main\">Skip to the page</a>\n")
            .Append("<div class=\"running\" aria-hidden=\"true\"><span>").Append(HtmlText.Of(page.Title)).Append("</span> <span>")
            .Append(HtmlText.Of(page.Standing)).Append("</span></div>\n")
            .Append("<main id=\"main\" tabindex=\"-1\">\n");
        foreach (var part in page.Parts.Where(part => !part.Blocks.IsEmpty))
        {
            html.Append("<section class=\"").Append(part.Name).Append("\">\n").Append(HtmlWriter.Write(part)).Append("</section>\n");
        }

        return html.Append("</main>\n</body>\n</html>\n").ToString();
    }
}
