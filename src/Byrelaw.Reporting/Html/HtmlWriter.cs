namespace Byrelaw.Reporting.Html;

/// <summary>Writes blocks as HTML.</summary>
public static class HtmlWriter
{
    /// <summary>The blocks, one after the other.</summary>
    public static string Write(IEnumerable<Element> blocks)
    {
        ArgumentNullException.ThrowIfNull(blocks);
        var html = new StringBuilder();
        Write(html, blocks);
        return html.ToString();
    }

    internal static void Write(StringBuilder html, IEnumerable<Element> blocks)
    {
        foreach (var block in blocks)
        {
            Write(html, block);
        }
    }

    private static void Write(StringBuilder html, Element block)
    {
        switch (block)
        {
            case EmptyLine:
                break;
            case Heading heading:
                html.Append("<h").Append(heading.Level).Append('>').Words(heading.Words).Append("</h").Append(heading.Level).Append(">\n");
                break;
            case Sentence sentence:
                html.Append(Paragraph(sentence.Tone)).Words(sentence.Words).Append("</p>\n");
                break;
            case Listing list:
                Items(html, list);
                break;
            case Quotation quotation:
                html.Append("<blockquote><p>").Words(quotation.Words).Append("</p></blockquote>\n");
                break;
            case FileLines lines:
                html.Append("<pre>").AppendJoin('\n', lines.Lines.Select(HtmlText.Of)).Append("</pre>\n");
                break;
            case Table table:
                HtmlTable.Write(html, table);
                break;
            case Picture picture:
                html.Append(picture.Html);
                break;
            case Framed framed:
                Frame(html, framed);
                break;
            case Folded folded:
                html.Append(folded.OnScreenOnly ? "<details class=\"screen\">" : "<details>").Append("<summary>").Words(folded.Summary).Append("</summary>\n");
                Write(html, folded.Blocks);
                html.Append("</details>\n");
                break;
            case Blanks blanks:
                html.Append("<div class=\"sign\">").AppendJoin("", blanks.Names.Select(name => $"<div>{HtmlText.Of(name)}</div>")).Append("</div>\n");
                break;
            case AnswerBar bar:
                HtmlBars.Write(html, bar);
                break;
            case KeptBack kept:
                HtmlBars.Write(html, kept);
                break;
            case Finder finder:
                HtmlFinder.Write(html, finder);
                break;
            case ListRows rows:
                HtmlRows.Write(html, rows);
                break;
            case Lanes lanes:
                HtmlLanes.Write(html, lanes);
                break;
            case AnimalHeading her:
                html.Append("<div class=\"her\"><h1>").Text(her.Number).Append("</h1><div>").Words(her.Answer).Append("<span class=\"who\">").Text(her.Who).Append("</span></div></div>\n");
                break;
            case Cards cards:
                HtmlCards.Write(html, cards);
                break;
            case SessionStalls session:
                HtmlSessions.Write(html, session);
                break;
            case JobColumns jobs:
                HtmlJobs.Write(html, jobs);
                break;
            default:
                throw new NotSupportedException(block.GetType().Name);
        }
    }

    private static string Paragraph(Tone tone) => tone switch
    {
        Tone.Lead => "<p class=\"lead\">",
        Tone.Large => "<p class=\"big\">",
        Tone.Soft => "<p class=\"soft\">",
        _ => "<p>",
    };

    private static void Items(StringBuilder html, Listing list)
    {
        var name = list.IsNumbered ? "ol" : "ul";
        html.Append('<').Append(name).Append(">\n");
        foreach (var item in list.Items)
        {
            html.Append("<li>").Words(item).Append("</li>\n");
        }

        html.Append("</").Append(name).Append(">\n");
    }

    private static void Frame(StringBuilder html, Framed framed)
    {
        html.Append("<div class=\"").Append(framed.Frame switch { Documents.Frame.Danger => "warn", Documents.Frame.Stop => "stop", _ => "job" }).Append("\">");
        foreach (var words in framed.Sentences)
        {
            html.Append("<p>").Words(words).Append("</p>");
        }

        html.Append("</div>\n");
    }
}
