namespace Byrelaw.Reporting.Html;

/// <summary>Draws shares as bars, each with its number beside it: answers, and what keeps animals back.</summary>
internal static class HtmlBars
{
    public static void Write(StringBuilder html, AnswerBar bar)
    {
        html.Append("<div class=\"bar\" aria-hidden=\"true\">");
        foreach (var share in bar.Shares.Where(share => share.Count > 0))
        {
            var name = HtmlWords.ClassOf(share.Answer);
            html.Append(CultureInfo.InvariantCulture, $"<i class=\"{name} p-{name}\" style=\"--n:{share.Count}\"></i>");
        }

        html.Append("</div>\n<ul class=\"barkey\">");
        foreach (var share in bar.Shares)
        {
            var name = HtmlWords.ClassOf(share.Answer);
            html.Append(CultureInfo.InvariantCulture, $"<li class=\"{name}\"><i class=\"swatch p-{name}\" aria-hidden=\"true\"></i><b>{share.Count}</b> ");
            _ = share.Target is null ? html.Append("<span class=\"").Append(name).Append("\">") : html.Append("<a class=\"").Append(name).Append("\" href=\"").Append(HtmlWords.LinkOf(share.Target)).Append("\">");
            html.Append("<span aria-hidden=\"true\">").Append(AnswerWords.Shape(share.Answer)).Append("</span> ").Text(AnswerWords.Word(share.Answer, share.Use)).Append(share.Target is null ? "</span></li>" : "</a></li>");
        }

        html.Append("</ul>\n");
    }

    /// <summary>A bar for each rule: filled for those whom nothing else keeps back, hatched for the others.</summary>
    public static void Write(StringBuilder html, KeptBack kept)
    {
        var most = kept.Rows.Max(rule => rule.InAll);
        html.Append("<p class=\"soft\">").Text(kept.Caption).Append("</p>\n<ul class=\"backs\">\n");
        foreach (var rule in kept.Rows)
        {
            html.Append("<li><span>").Text(rule.Rule).Append("</span><span class=\"rail\" aria-hidden=\"true\">")
                .Append(Piece("alone", rule.Alone, most)).Append(Piece("shared", rule.InAll - rule.Alone, most))
                .Append(CultureInfo.InvariantCulture, $"</span><span class=\"n\"><b>{rule.Alone}</b> alone, {rule.InAll} in all</span></li>\n");
        }

        html.Append("</ul>\n");
    }

    private static string Piece(string name, int count, int of) =>
        count == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $"<i class=\"{name}\" style=\"width:{Math.Round(100.0 * count / of, 1)}%\"></i>");
}
