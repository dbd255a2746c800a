namespace Byrelaw.Reporting.Html;

/// <summary>
/// Draws marks on days: one unit a day, and strokes that do not scale, so that the same drawing fits a telephone, a screen and paper. What they say stands in words beside
/// them.
/// </summary>
internal static class HtmlMarks
{
    private static readonly DayMarkKind[] Kinds = Enum.GetValues<DayMarkKind>();

    /// <summary>All of an animal's marks on one strip, each kind in its own place: calved the full height, heat above, served below.</summary>
    public static void Strip(StringBuilder html, ImmutableArray<DayMark> marks)
    {
        foreach (var kind in Kinds)
        {
            var start = html.Length;
            foreach (var mark in marks)
            {
                if (mark.Kind == kind)
                {
                    _ = html.Length == start ? html.Append("<path class=\"").Append(StripClass(kind)).Append("\" d=\"") : html;
                    html.Append(CultureInfo.InvariantCulture, $"M{mark.From} ");
                    _ = kind switch
                    {
                        DayMarkKind.Calved => html.Append("0v14"),
                        DayMarkKind.Heat => html.Append("1v6"),
                        DayMarkKind.Served => html.Append("7v7"),
                        DayMarkKind.Looked => html.Append("11h.1"),
                        DayMarkKind.Unwanted => html.Append("3h3"),
                        _ => html.Append(CultureInfo.InvariantCulture, $"7H{mark.To}"),
                    };
                }
            }

            _ = html.Length == start ? html : html.Append("\"/>");
        }
    }

    /// <summary>The marks of one lane, in its middle.</summary>
    public static void Lane(StringBuilder html, ImmutableArray<DayMark> marks)
    {
        foreach (var mark in marks)
        {
            html.Append("<path class=\"").Append(LaneClass(mark.Kind)).Append(CultureInfo.InvariantCulture, $"\" d=\"M{mark.From} ");
            _ = mark.Kind switch
            {
                DayMarkKind.Calved => html.Append("0v14"),
                DayMarkKind.Heat or DayMarkKind.Served => html.Append("1v12"),
                DayMarkKind.Looked or DayMarkKind.Unwanted => html.Append("7h.1"),
                _ => html.Append(CultureInfo.InvariantCulture, $"7H{mark.To}"),
            };
            html.Append("\"/>");
        }
    }

    private static string StripClass(DayMarkKind kind) => kind switch
    {
        DayMarkKind.Calved => "c",
        DayMarkKind.Heat => "h",
        DayMarkKind.Served => "s",
        DayMarkKind.Looked => "k",
        DayMarkKind.Unwanted => "x",
        DayMarkKind.Holds => "g",
        DayMarkKind.NotKnown => "q",
        _ => "f",
    };

    private static string LaneClass(DayMarkKind kind) => kind switch
    {
        DayMarkKind.Calved or DayMarkKind.Served => "bar1",
        DayMarkKind.Heat => "tick1",
        DayMarkKind.Looked or DayMarkKind.Unwanted => "dot",
        DayMarkKind.Holds => "yes",
        DayMarkKind.NotKnown => "perhaps",
        _ => "not",
    };
}
