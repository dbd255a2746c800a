namespace Byrelaw.Reporting.Html;

/// <summary>
/// Writes a table that can be heard as well as seen: caption, headings with scope, and each cell
/// with its column's name, which a narrow screen shows beside it.
/// </summary>
internal static class HtmlTable
{
    /// <summary>The columns that say which row it is; where a table has none of them, its first does.</summary>
    private static readonly string[] RowNames = ["number", "rule", "from", "what to do", "rank", "list", "what is preferred"];

    public static void Write(StringBuilder html, Table table)
    {
        var headings = table.Columns.Select(column => HtmlText.Of(column.Heading)).ToArray();
        var named = Math.Max(0, Array.FindIndex(headings, RowNames.Contains));
        html.Append(table.IsForTheYards ? "<div class=\"yardbox\"><table class=\"yard\">\n<caption>" : "<table class=\"wide\">\n<caption>").Text(table.Caption).Append("</caption>\n<thead>\n<tr>");
        for (var i = 0; i < headings.Length; i++)
        {
            html.Append("<th scope=\"col\"").Append(Class(table, i)).Append('>').Append(headings[i]).Append("</th>");
        }

        html.Append("</tr>\n</thead>\n<tbody>\n");
        foreach (var row in table.Rows)
        {
            html.Append("<tr>");
            for (var i = 0; i < headings.Length; i++)
            {
                _ = i == named ? html.Append("<th scope=\"row\"").Append(Class(table, i)).Append('>').Words(row[i]).Append("</th>")
                    : table.IsForTheYards ? ForTheYards(html, headings[i], row[i])
                    : html.Append("<td").Append(Class(table, i)).Append(" data-k=\"").Append(headings[i]).Append("\">").Words(row[i]).Append("</td>");
            }

            html.Append("</tr>\n");
        }

        html.Append("</tbody>\n</table>").Append(table.IsForTheYards ? "</div>\n" : "\n");
    }

    /// <summary>A cell of a paper: what is to be written has a frame, and a box is large enough to tick with a glove on.</summary>
    private static StringBuilder ForTheYards(StringBuilder html, string heading, Wording cell)
    {
        if (cell.ToString() == Blanks.Line)
        {
            return html.Append("<td class=\"fill\" data-k=\"").Append(heading).Append("\"><i></i></td>");
        }

        html.Append("<td data-k=\"").Append(heading).Append("\">");
        var start = html.Length;
        return html.Words(cell).Replace(Blanks.Box, "<span class=\"tick\"></span>", start, html.Length - start).Append("</td>");
    }

    private static string Class(Table table, int column) => table.Columns[column].IsNumber ? " class=\"n\"" : "";
}
