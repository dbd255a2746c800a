namespace Byrelaw.Reporting.Html;

/// <summary>Writes a session with its stalls.</summary>
internal static class HtmlSessions
{
    public static void Write(StringBuilder html, SessionStalls session)
    {
        html.Append("<section class=\"session\"><div><h3>").Words(session.Heading).Append("</h3><p class=\"soft\">");
        for (var i = 0; i < session.Days.Length; i++)
        {
            html.Append(i > 0 ? "<br />" : "").Words(session.Days[i]);
        }

        html.Append("</p></div><div><dl class=\"counts\">");
        foreach (var (name, count) in session.Counts)
        {
            html.Append("<div><dt>").Text(name).Append("</dt><dd>").Text(count).Append("</dd></div>");
        }

        html.Append("</dl>");
        if (!session.Named.IsEmpty || session.Empty > 0)
        {
            html.Append("<ul class=\"stalls\" aria-label=\"Places\">");
            foreach (var named in session.Named)
            {
                html.Append("<li>").Words(named).Append("</li>");
            }

            html.Insert(html.Length, "<li class=\"empty\">empty</li>", session.Empty).Append("</ul>");
        }

        _ = session.Note.IsEmpty ? html : html.Append("<p>").Words(session.Note).Append("</p>");
        html.Append("</div></section>\n");
    }
}
