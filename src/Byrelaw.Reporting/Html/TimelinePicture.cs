namespace Byrelaw.Reporting.Html;

/// <summary>
/// An animal's year ahead as a small picture: a bar for all rules together and one for each rule
/// that is not simply met throughout. Patterns tell the answers apart, not colours, and places are
/// per cent of the width, so the same picture fits a telephone, a screen and paper.
/// </summary>
public static class TimelinePicture
{
    private const int Row = 34;
    private const int Bar = 13;
    private const int Top = 40;

    /// <summary>A figure with its key.</summary>
    public static string Of(AnimalReport report)
    {
        var rows = Rows(report);
        var axis = new Axis(report.Animal.Timeline.First, report.Animal.Timeline.Last);
        var height = Top + (rows.Count * Row) + 22;
        var svg = new StringBuilder();
        svg.Append(CultureInfo.InvariantCulture,
            $"<svg class=\"picture\" width=\"100%\" height=\"{height}\" role=\"img\" aria-labelledby=\"picture-title picture-text\" xmlns=\"http://www.w3.org/2000/svg\">\n");
        svg.Append("<title id=\"picture-title\">").Append(HtmlText.Of($"When the rules hold for {report.Animal.Number}")).Append("</title>\n");
        svg.Append("<desc id=\"picture-text\">").Append(HtmlText.Of(string.Join(". ", rows.Select(row => $"{row.Name}: {TimelineWords.Of(row.Timeline)}")))).Append("</desc>\n");
        svg.Append(Patterns);
        Months(svg, axis, height);
        for (var i = 0; i < rows.Count; i++)
        {
            Draw(svg, axis, rows[i].Timeline, Top + (i * Row));
        }

        Marks(svg, axis, report, height);
        for (var i = 0; i < rows.Count; i++)
        {
            svg.Append(CultureInfo.InvariantCulture, $"<text x=\"0\" y=\"{Top + (i * Row) + 11}\"{(i == 0 ? " class=\"all\"" : "")}>{HtmlText.Of(rows[i].Name)}</text>\n");
        }

        svg.Append("</svg>\n");
        return $"<figure>\n{svg}{Key(report, rows.Count)}</figure>\n";
    }

    private static List<(string Name, Timeline Timeline)> Rows(AnimalReport report)
    {
        var rules = report.Animal.Rules.Where(rule => rule.Rule?.OnTheDay != true && !HoldsThroughout(rule.Timeline)).Select(rule => (rule.Name, rule.Timeline));
        return [("All rules together", report.Animal.Timeline), .. rules];
    }

    private static bool HoldsThroughout(Timeline timeline) => timeline.Stretches.All(stretch => stretch.Truth == Truth.True);

    private static void Draw(StringBuilder svg, Axis axis, Timeline timeline, int y)
    {
        for (var i = 0; i < timeline.Stretches.Length; i++)
        {
            var stretch = timeline.Stretches[i];
            var end = i + 1 < timeline.Stretches.Length ? timeline.Stretches[i + 1].From : timeline.Last.PlusDays(1);
            var fill = stretch.Truth switch
            {
                Truth.True when stretch.Expected => "url(#yes-if)",
                Truth.True => "currentColor",
                Truth.Unknown => "url(#not-known)",
                _ => "none",
            };
            var (left, right) = (Math.Max(0, axis.At(stretch.From)), Math.Min(100, axis.At(end)));
            if (right <= left)
            {
                continue;
            }

            svg.Append(CultureInfo.InvariantCulture, $"<rect x=\"{left}%\" y=\"{y + 15}\" width=\"{Math.Round(right - left, 3)}%\" height=\"{Bar}\" fill=\"{fill}\"/>\n");
        }

        svg.Append(CultureInfo.InvariantCulture, $"<rect class=\"frame\" x=\"0\" y=\"{y + 15}\" width=\"100%\" height=\"{Bar}\" fill=\"none\"/>\n");
    }

    private static void Months(StringBuilder svg, Axis axis, int height)
    {
        for (var month = new LocalDate(axis.First.Year, axis.First.Month, 1).PlusMonths(1); month <= axis.Last; month = month.PlusMonths(1))
        {
            var name = month.Month == 1 ? month.Year.ToString(CultureInfo.InvariantCulture) : Dates.ShortMonth(month.Month);
            svg.Append(CultureInfo.InvariantCulture, $"<line class=\"month\" x1=\"{axis.At(month)}%\" x2=\"{axis.At(month)}%\" y1=\"{Top}\" y2=\"{height - 16}\"/>");
            if (axis.Width(month, axis.Last) >= 6)
            {
                svg.Append(CultureInfo.InvariantCulture, $"<text class=\"small{(month.Month % 2 == 0 ? " even" : "")}\" x=\"{axis.At(month)}%\" y=\"{height - 3}\">{name}</text>");
            }

            svg.Append('\n');
        }
    }

    private static void Marks(StringBuilder svg, Axis axis, AnimalReport report, int height)
    {
        var (list, choice) = (report.On, report.On.List.Choice);
        var known = list.Herd.KnownDay;
        if (list.Herd.ReachesADay && axis.Holds(known))
        {
            Mark(svg, axis.At(known.PlusDays(1)), 12, height, "known", $"records end {list.Short(known)}");
        }

        if (axis.Holds(choice.JudgedFrom))
        {
            var days = list.SeveralDays ? $"{list.Short(choice.JudgedFrom)} to {list.Short(choice.JudgedTo)}" : list.Short(choice.JudgedFrom);
            Mark(svg, axis.At(choice.JudgedFrom), 28, height, "judged", $"judged {days}");
            if (list.SeveralDays)
            {
                svg.Append(CultureInfo.InvariantCulture, $"<line class=\"judged\" x1=\"{axis.At(choice.JudgedTo.PlusDays(1))}%\" x2=\"{axis.At(choice.JudgedTo.PlusDays(1))}%\" y1=\"32\" y2=\"{height - 16}\"/>\n");
            }
        }
    }

    private static void Mark(StringBuilder svg, double at, int y, int height, string name, string words)
    {
        var (anchor, dx) = at > 60 ? ("end", -4) : ("start", 4);
        svg.Append(CultureInfo.InvariantCulture, $"<line class=\"{name}\" x1=\"{at}%\" x2=\"{at}%\" y1=\"{y - 9}\" y2=\"{height - 16}\"/>");
        svg.Append(CultureInfo.InvariantCulture, $"<text class=\"small\" x=\"{at}%\" dx=\"{dx}\" y=\"{y}\" text-anchor=\"{anchor}\">{HtmlText.Of(words)}</text>\n");
    }

    private static string Key(AnimalReport report, int rows)
    {
        static string Swatch(string fill, string words) =>
            $"<span class=\"key\"><svg width=\"26\" height=\"{Bar}\" aria-hidden=\"true\"><rect x=\"0.5\" y=\"0.5\" width=\"25\" height=\"12\" fill=\"{fill}\" class=\"frame\"/></svg> {words}</span> ";
        var hidden = report.Animal.Rules.Count(rule => rule.Rule?.OnTheDay != true) - (rows - 1);
        var others = hidden == 0 ? "" : $" {Numbers.Count(hidden, "other rule holds", "other rules hold")} throughout.";
        return "<figcaption>" + Swatch("currentColor", "yes") + Swatch("url(#yes-if)", "yes, if nothing happens") + Swatch("url(#not-known)", "not known") + Swatch("none", "no")
            + $"<span>Dashed line: the day the records end.{(report.On.SeveralDays ? " Two lines: the judging days." : " Full line: the judging day.")}{others}</span></figcaption>\n";
    }

    private const string Patterns =
        """
        <defs>
        <pattern id="yes-if" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><rect width="3.6" height="6" fill="currentColor"/></pattern>
        <pattern id="not-known" width="6" height="6" patternUnits="userSpaceOnUse"><circle cx="2" cy="2" r="1" fill="currentColor"/></pattern>
        </defs>

        """;

    /// <summary>Where a day lies, in per cent of the width.</summary>
    private sealed record Axis(LocalDate First, LocalDate Last)
    {
        public double At(LocalDate day) => Math.Round(Width(First, day), 3);

        public double Width(LocalDate from, LocalDate to) =>
            Math.Round(100.0 * Period.DaysBetween(from, to) / (Period.DaysBetween(First, Last) + 1), 3);

        public bool Holds(LocalDate day) => day >= First && day <= Last;
    }
}
