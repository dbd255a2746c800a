using Markdig;
using Markdig.Extensions.Tables;
using Markdig.Renderers;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace Byrelaw.Reporting.Html;

/// <summary>Turns a part's Markdown into HTML: CommonMark with pipe tables, raw HTML never.</summary>
public static class MarkdownToHtml
{
    /// <summary>What our pages are written in.</summary>
    public static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder().UsePipeTables().DisableHtml().Build();

    /// <summary>The HTML of one part; links to Markdown files lead to the HTML beside them.</summary>
    public static string Convert(string markdown)
    {
        var document = Markdig.Markdown.Parse(markdown, Pipeline);
        foreach (var link in document.Descendants<LinkInline>())
        {
            if (link.Url is { } url && url.EndsWith(".md", StringComparison.Ordinal))
            {
                link.Url = url[..^3] + ".html";
            }
        }

        var writer = new StringWriter { NewLine = "\n" };
        var renderer = new HtmlRenderer(writer);
        Pipeline.Setup(renderer);
        renderer.ObjectRenderers.ReplaceOrAdd<HtmlTableRenderer>(new TableToHtml());
        Captions.Lift(document);
        renderer.Render(document);
        return writer.ToString();
    }
}
