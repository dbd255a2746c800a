namespace Byrelaw.Reporting.Html;

/// <summary>Writes words as HTML: each stretch as it is set off, and as a link where it leads somewhere.</summary>
internal static class HtmlWords
{
    /// <summary>Adds them.</summary>
    public static StringBuilder Words(this StringBuilder html, Wording words)
    {
        var start = html.Length;
        for (var i = 0; i < words.Runs.Count; i++)
        {
            var run = words.Runs[i];
            if (run.Target is not null && (i == 0 || words.Runs[i - 1].Target != run.Target))
            {
                html.Append("<a href=\"").Append(LinkOf(run.Target)).Append("\">");
            }

            var clean = PlainText.CleanWithin(run.Text);
            Run(html, html.Length == start || html[^1] == ' ' ? clean.TrimStart(' ') : clean, run.Style);
            if (run.Target is not null && (i == words.Runs.Count - 1 || words.Runs[i + 1].Target != run.Target))
            {
                html.Append("</a>");
            }
        }

        while (html.Length > start && html[^1] == ' ')
        {
            html.Length--;
        }

        return html;
    }

    /// <summary>Adds plain words.</summary>
    public static StringBuilder Text(this StringBuilder html, string words) => html.Append(HtmlText.Of(words));

    /// <summary>Where a link leads: what Markdown calls a page has another ending here.</summary>
    public static string LinkOf(string target)
    {
        var at = target.IndexOf('#', StringComparison.Ordinal);
        var (file, place) = at < 0 ? (target, "") : (target[..at], target[at..]);
        return HtmlText.Of((file.EndsWith(".md", StringComparison.Ordinal) ? file[..^3] + ".html" : file) + place);
    }

    /// <summary>The class of an answer, in the style sheet and in the script.</summary>
    public static string ClassOf(Answer answer) => answer switch
    {
        Answer.Ready => "ready",
        Answer.OnCourse => "course",
        Answer.Later => "later",
        Answer.Ask => "ask",
        _ => "no",
    };

    private static void Run(StringBuilder html, string words, RunStyle style)
    {
        switch (style)
        {
            case RunStyle.Plain:
                Escaped(html, words);
                break;
            case RunStyle.Bold:
                Within(html, "<strong>", words, "</strong>");
                break;
            case RunStyle.Faint:
                Within(html, "<span class=\"soft\">", words, "</span>");
                break;
            case RunStyle.Danger:
                Within(html, "<span class=\"danger\">", words, "</span>");
                break;
            case RunStyle.MayBe:
                Within(html, "<span class=\"maybe\">", words, "</span>");
                break;
            case RunStyle.Note:
                Within(html, "<span class=\"note\">", words, "</span>");
                break;
            default:
                Badge(html, words, ClassOf(AnswerOf(style)));
                break;
        }
    }

    /// <summary>A shape that is not read aloud, and the word.</summary>
    private static void Badge(StringBuilder html, string words, string name)
    {
        var at = words.IndexOf(' ', StringComparison.Ordinal);
        html.Append("<span class=\"badge ").Append(name).Append("\"><span aria-hidden=\"true\">").Text(words[..at]).Append("</span> ").Text(words[(at + 1)..]).Append("</span>");
    }

    private static Answer AnswerOf(RunStyle style) => style switch
    {
        RunStyle.Ready => Answer.Ready,
        RunStyle.OnCourse => Answer.OnCourse,
        RunStyle.Later => Answer.Later,
        RunStyle.Ask => Answer.Ask,
        _ => Answer.No,
    };

    private static void Within(StringBuilder html, string before, string words, string after)
    {
        html.Append(before);
        Escaped(html, words);
        html.Append(after);
    }

    private static void Escaped(StringBuilder html, string clean) => html.Append(HtmlText.Escaped(clean));
}
