namespace Byrelaw.Reporting.Html;

/// <summary>Writes a part of a page as HTML: its words through Markdown, its pictures as they are.</summary>
public static class HtmlWriter
{
    /// <summary>What goes between a section's tags.</summary>
    public static string Write(Part part)
    {
        if (!part.Blocks.Any(block => block is Picture))
        {
            return MarkdownToHtml.Convert(part.Markdown);
        }

        var html = new StringBuilder();
        var words = new List<Element>();
        foreach (var block in part.Blocks)
        {
            if (block is Picture picture)
            {
                html.Append(MarkdownToHtml.Convert(MarkdownWriter.Write(words))).Append(picture.Html);
                words.Clear();
            }
            else
            {
                words.Add(block);
            }
        }

        return html.Append(MarkdownToHtml.Convert(MarkdownWriter.Write(words))).ToString();
    }
}
