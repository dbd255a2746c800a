namespace Byrelaw.Reporting.Html;

/// <summary>Writes cards side by side.</summary>
internal static class HtmlCards
{
    public static void Write(StringBuilder html, Cards cards)
    {
        html.Append("<h2 class=\"sr\">").Text(cards.Heading).Append("</h2>\n<div class=\"gates\">\n");
        foreach (var card in cards.All)
        {
            html.Append("<section><h3>").Words(card.Heading).Append("</h3><dl>");
            foreach (var (name, says) in card.Facts)
            {
                html.Append("<dt>").Text(name).Append("</dt><dd>").Words(says).Append("</dd>");
            }

            html.Append("</dl></section>\n");
        }

        html.Append("</div>\n");
    }
}
