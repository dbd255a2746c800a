namespace Byrelaw.Reporting.Html;

/// <summary>Writes jobs in columns by place, each with its box.</summary>
internal static class HtmlJobs
{
    public static void Write(StringBuilder html, JobColumns jobs)
    {
        html.Append("<div class=\"places\">\n");
        foreach (var column in jobs.Columns)
        {
            html.Append("<section><h3>").Text(column.Heading).Append("</h3><ul class=\"jobs\">");
            foreach (var job in column.Jobs)
            {
                html.Append(job.HasBox ? "<li><span class=\"tick\"></span><span><strong>" : "<li><span aria-hidden=\"true\">–</span><span><strong>").Text(job.What).Append("</strong>").Words(job.For)
                    .Append(job.When.Length > 0 ? " <span class=\"when\">" : "").Text(job.When).Append(job.When.Length > 0 ? "</span></span></li>" : "</span></li>");
            }

            html.Append("</ul></section>\n");
        }

        html.Append("</div>\n");
    }
}
