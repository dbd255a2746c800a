namespace Byrelaw.Reporting.Html;

/// <summary>Writes a row for each animal, with her strip of days. A row is kept short: a list of thousands is one page.</summary>
internal static class HtmlRows
{
    public static void Write(StringBuilder html, ListRows rows)
    {
        if (rows.Axis is { } axis)
        {
            html.Append("<div class=\"axis\" aria-hidden=\"true\"><span>");
            foreach (var month in axis.Months().Where(month => axis.PerCent(month) < 92))
            {
                html.Append(CultureInfo.InvariantCulture, $"<i style=\"left:{axis.PerCent(month)}%\">{(month.Month == 1 ? $"{month.Year}" : Dates.ShortMonth(month.Month))}</i>");
            }

            html.Append("</span></div>\n");
        }

        html.Append("<ul class=\"herd\" aria-label=\"").Text(rows.Caption).Append(rows.Axis is { } days ? $"\" style=\"{HtmlLanes.AxisStyle(days)}\">\n" : "\">\n");
        foreach (var row in rows.Rows)
        {
            Row(html, row, rows.Axis);
        }

        html.Append("</ul>\n");
    }

    private static void Row(StringBuilder html, ListRow row, YearAxis? axis)
    {
        html.Append("<li class=\"row\" id=\"").Append(Anchors.Of(row.Number)).Append("\" data-a=\"").Append(HtmlWords.ClassOf(row.Answer)).Append("\" data-m=\"").Text(row.Mob)
            .Append(row.InCalf == InCalf.NotTold ? "\">" : "\" data-d=\"1\">");
        _ = row.Page is null ? html.Append("<b tabindex=\"-1\">").Text(row.Number).Append("</b>")
            : html.Append("<b><a href=\"").Append(HtmlWords.LinkOf(row.Page)).Append("\">").Text(row.Number).Append("</a></b>");
        html.Append("<span class=\"who\">").Text(row.Mob).Append(row.Mob.Length > 0 && row.Sort.Length > 0 ? " · " : "").Text(row.Sort).Append(row.Tag.Length > 0 ? " <i>" : "").Text(row.Tag).Append(row.Tag.Length > 0 ? "</i>" : "")
            .Append("</span><span class=\"say\">");
        if (row.InCalf != InCalf.NotTold)
        {
            html.Words(Wording.Danger(row.InCalf)).Append(' ');
        }

        html.Words(row.Says).Append("</span>");
        if (axis is not null && !row.Strip.IsEmpty)
        {
            html.Append("<svg class=\"strip ").Append(HtmlWords.ClassOf(row.Answer)).Append(CultureInfo.InvariantCulture, $"\" viewBox=\"0 0 {axis.Days} 14\" preserveAspectRatio=\"none\" aria-hidden=\"true\">");
            HtmlMarks.Strip(html, row.Strip);
            html.Append("</svg>");
        }

        html.Append("</li>\n");
    }
}
