namespace Byrelaw.Reporting.Html;

/// <summary>Draws a lane for each kind of thing that happened to an animal, and for what she may be used for, on one axis.</summary>
internal static class HtmlLanes
{
    public static void Write(StringBuilder html, Lanes lanes)
    {
        html.Append("<div class=\"lanes\" style=\"").Append(AxisStyle(lanes.Axis)).Append("\"><div class=\"lane head\" aria-hidden=\"true\"><span></span><span class=\"ticks\">");
        foreach (var month in lanes.Axis.Months().Where(month => month.Month % 3 == 1 && !(lanes.Axis.Today is { } end && lanes.Axis.PerCent(end) - lanes.Axis.PerCent(month) is > -1 and < 30)))
        {
            html.Append(CultureInfo.InvariantCulture, $"<i style=\"left:{lanes.Axis.PerCent(month)}%\">{Dates.ShortMonth(month.Month)}{(month.Month == 1 ? $" {month.Year}" : "")}</i>");
        }

        _ = lanes.Axis.Today is { } today ? html.Append(CultureInfo.InvariantCulture, $"<i class=\"now\" style=\"left:{lanes.Axis.PerCent(today)}%\">records end</i>") : html;
        html.Append("</span></div>\n");
        foreach (var lane in lanes.All)
        {
            html.Append("<div class=\"lane\"><span><b>").Text(lane.Name).Append("</b> ").Words(lane.Says)
                .Append(CultureInfo.InvariantCulture, $"</span><svg class=\"mark\" viewBox=\"0 0 {lanes.Axis.Days} 14\" preserveAspectRatio=\"none\" aria-hidden=\"true\">");
            HtmlMarks.Lane(html, lane.Marks);
            html.Append("</svg></div>\n");
        }

        html.Append("</div>\n");
    }

    /// <summary>As many transfers as the style sheet draws lines for.</summary>
    private const int Lines = 6;

    /// <summary>Where today and the next transfers lie, for the lines that the style sheet draws behind every lane and strip.</summary>
    public static string AxisStyle(YearAxis axis)
    {
        var style = new StringBuilder();
        _ = axis.Today is { } today ? style.Append(CultureInfo.InvariantCulture, $"--t:{axis.PerCent(today)}%") : style;
        for (var i = 0; i < axis.Transfers.Length && i < Lines; i++)
        {
            style.Append(style.Length > 0 ? ";" : "").Append(CultureInfo.InvariantCulture, $"--s{i + 1}:{axis.PerCent(axis.Transfers[i])}%");
        }

        return style.ToString();
    }
}
