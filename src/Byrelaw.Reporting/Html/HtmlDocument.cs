namespace Byrelaw.Reporting.Html;

/// <summary>Makes a page's HTML. It needs nothing but, in a report, the style sheet and the script that lie there once; nothing is fetched from elsewhere.</summary>
public static class HtmlDocument
{
    private const string Gate = "<svg class=\"gate\" viewBox=\"0 0 46 34\" aria-hidden=\"true\"><path d=\"M2 1v32M44 1v32M2 5h42M2 11h42M2 17h42M2 23h42M2 29h42M2 29 44 5\"/></svg>";

    /// <summary>The whole document, as a page of a report.</summary>
    public static string Of(Page page)
    {
        ArgumentNullException.ThrowIfNull(page);
        var up = string.Concat(Enumerable.Repeat("../", page.Path.Count(c => c == '/')));
        return Of(page, $"<link rel=\"stylesheet\" href=\"{up}{PageFiles.StyleFile}\" />\n<script defer=\"defer\" src=\"{up}{PageFiles.ScriptFile}\"></script>\n");
    }

    /// <summary>The whole document, as a page that goes alone: to be printed, or sent to somebody.</summary>
    public static string Alone(Page page)
    {
        ArgumentNullException.ThrowIfNull(page);
        return Of(page, $"<style>\n{PageFiles.Style}</style>\n<script>\n//<![CDATA[\naddEventListener('DOMContentLoaded', () => {{\n{PageFiles.Script}}});\n//]]>\n</script>\n");
    }

    private static string Of(Page page, string files)
    {
        var html = new StringBuilder("<!DOCTYPE html>\n<html lang=\"en\"");
        _ = page.Head.HoldsTo is { } last ? html.Append(" data-void=\"").Append(LocalDatePattern.Iso.Format(last)).Append('"') : html;
        html.Append(">\n<head>\n<meta charset=\"utf-8\" />\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\" />\n<title>").Text(TitleOf(page)).Append("</title>\n")
            .Append(files).Append("<style>@page { @bottom-left { content: \"").Append(CssText.Of(RunningFoot(page))).Append("\" } }</style>\n</head>\n<body>\n<a class=\"skip\" href=\"#main\">Skip to the page</a>\n");
        Head(html, page.Head);
        html.Append("<main id=\"main\" tabindex=\"-1\">\n");
        foreach (var part in page.Parts.Where(part => !part.Blocks.IsEmpty))
        {
            html.Append("<section class=\"").Append(part.Name).Append(part.Anchor is null ? "\">\n" : $"\" id=\"{part.Anchor}\">\n");
            HtmlWriter.Write(html, part.Blocks);
            html.Append("</section>\n");
        }

        return html.Append("</main>\n<footer><p>").Text(Page.Foot).Append("</p></footer>\n</body>\n</html>\n").ToString();
    }

    private static string TitleOf(Page page) => page.Head.Programme.Length == 0 || page.Title.Contains(page.Head.Programme, StringComparison.Ordinal) ? page.Title : $"{page.Title} · {page.Head.Programme}";

    /// <summary>What it is, for when and until when, at the foot of every sheet of paper.</summary>
    private static string RunningFoot(Page page) => string.Join(" · ", page.Head.Facts.Select(fact => fact.InALine).Prepend(TitleOf(page)));

    private static void Head(StringBuilder html, PageHead head)
    {
        html.Append("<header>\n<div class=\"farm\">").Append("<div class=\"name\">").Append(Gate).Append("<span>").Text(head.Farm.Length == 0 ? "byrelaw" : head.Farm);
        _ = head.Season.Length == 0 ? html : html.Append("<small>").Text(head.Season).Append("</small>");
        html.Append("</span></div><dl>");
        foreach (var fact in head.Facts)
        {
            html.Append("<div><dt>").Text(Phrases.Sentence(fact.Name)).Append("</dt><dd>").Text(fact.Value).Append("</dd></div>");
        }

        html.Append("</dl></div>\n<nav class=\"ways\" aria-label=\"Pages\">");
        if (!head.Ways.IsEmpty)
        {
            html.Append("<ul>");
            foreach (var way in head.Ways)
            {
                html.Append("<li><a href=\"").Append(HtmlWords.LinkOf(way.Target)).Append(way.IsHere ? "\" aria-current=\"page\">" : "\">").Text(way.Words).Append("</a></li>");
            }

            html.Append("</ul>");
        }

        html.Append("</nav>\n");
        _ = head.Devices is { } devices ? html.Append(CultureInfo.InvariantCulture, $"<p class=\"devices\"><b>Devices in, not out: {devices.Count}</b> ").Text(devices.Listed).Append("</p>\n") : html;
        html.Append("</header>\n");
    }
}
