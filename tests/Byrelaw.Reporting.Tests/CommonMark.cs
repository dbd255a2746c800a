using Markdig;

namespace Byrelaw.Reporting.Tests;

/// <summary>Our Markdown as a general library reads it: CommonMark with pipe tables, raw HTML never.</summary>
internal static class CommonMark
{
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder().UsePipeTables().DisableHtml().Build();

    public static Markdig.Syntax.MarkdownDocument Parse(string text) => Markdig.Markdown.Parse(text, Pipeline);
}
