using Markdig.Extensions.Tables;
using Markdig.Renderers;
using Markdig.Renderers.Html;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;
using Table = Markdig.Extensions.Tables.Table;

namespace Byrelaw.Reporting.Html;

/// <summary>
/// Writes a table that can be heard as well as seen: caption, headings with scope, and each cell
/// with its column's name, which a narrow screen shows beside it.
/// </summary>
internal sealed class TableToHtml : HtmlObjectRenderer<Table>
{
    /// <summary>The columns that say which row it is.</summary>
    private static readonly string[] RowNames = ["number", "rule", "from", "what to do", "rank", "list", "what is preferred"];

    protected override void Write(HtmlRenderer renderer, Table table)
    {
        var rows = table.OfType<TableRow>().ToList();
        var headings = rows[0].OfType<TableCell>().Select(Words).ToList();
        var rowName = headings.FindIndex(heading => RowNames.Contains(heading));
        renderer.Write("<table>\n");
        if (Captions.Of(table) is { } caption)
        {
            renderer.Write("<caption>");
            renderer.WriteChildren(caption);
            renderer.Write("</caption>\n");
        }

        renderer.Write("<thead>\n<tr>");
        foreach (var heading in headings)
        {
            renderer.Write("<th scope=\"col\">").WriteEscape(heading).Write("</th>");
        }

        renderer.Write("</tr>\n</thead>\n<tbody>\n");
        foreach (var row in rows.Skip(1))
        {
            renderer.Write("<tr>");
            var cells = row.OfType<TableCell>().ToList();
            for (var i = 0; i < cells.Count; i++)
            {
                Cell(renderer, cells[i], headings[i], i == rowName);
            }

            renderer.Write("</tr>\n");
        }

        renderer.Write("</tbody>\n</table>\n");
    }

    private static void Cell(HtmlRenderer renderer, TableCell cell, string heading, bool namesRow)
    {
        var tag = namesRow ? "th" : "td";
        renderer.Write('<').Write(tag).Write(namesRow ? " scope=\"row\"" : "").Write(" data-label=\"").WriteEscape(heading).Write("\">");
        if (cell.OfType<ParagraphBlock>().FirstOrDefault() is { } paragraph)
        {
            renderer.WriteLeafInline(paragraph);
        }

        renderer.Write("</").Write(tag).Write('>');
    }

    private static string Words(TableCell cell) =>
        string.Concat(cell.Descendants<LiteralInline>().Select(literal => literal.Content.ToString()));
}
