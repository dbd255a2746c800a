using OxyPlot;
using OxyPlot.Series;

namespace Byrelaw.Reporting.Pictures;

/// <summary>How many recipients the rules would let in, day by day.</summary>
internal static class ReadyByDatePicture
{
    private const int DaysAfter = 60;

    /// <summary>The figure, from the first day to two months after the last transfer.</summary>
    public static string Of(ReadyByDate ready, PlanCalendar calendar)
    {
        var last = calendar.Sessions.IsEmpty ? ready.Ready.Length - 1 : Period.DaysBetween(ready.First, calendar.Sessions[^1].FinalTransfer) + DaysAfter;
        var days = Math.Clamp(last, 1, ready.Ready.Length - 1);
        var model = Chart.Empty();
        model.Axes.Add(DayAxis.Between(ready.First, ready.First.PlusDays(days)));
        model.Axes.Add(Chart.Counting("recipients", Enumerable.Range(0, days + 1).Max(day => ready.Ready[day] + ready.Asked[day])));
        model.Series.Add(Steps(Enumerable.Range(0, days + 1).Select(day => ready.Ready[day] + ready.Asked[day]), LineStyle.Dash));
        model.Series.Add(Steps(ready.Ready.Take(days + 1), LineStyle.Solid));
        foreach (var session in calendar.Sessions)
        {
            model.Annotations.Add(DayAxis.Mark(ready.First, session.FirstTransfer, $"transfer {Dates.Short(session.FirstTransfer, session.FirstTransfer.Year)}", LineStyle.Solid));
        }

        return Chart.Figure(model, 300, $"{Phrases.Sentence(ready.List)} ready by date{Spoken(ready, calendar.Sessions)}",
            "Full line: the rules hold, if nothing happens after the records end. Dashed line: with those who would be asked about, if all turned out well.");
    }

    private static string Spoken(ReadyByDate ready, ImmutableArray<Session> sessions) => string.Concat(sessions
        .Select(session => (session.FirstTransfer, Day: Period.DaysBetween(ready.First, session.FirstTransfer)))
        .Where(session => session.Day >= 0 && session.Day < ready.Ready.Length)
        .Select(session => $"; on {Dates.Long(session.FirstTransfer)} {ready.Ready[session.Day]}, and {ready.Asked[session.Day]} more to ask about"));

    private static StairStepSeries Steps(IEnumerable<int> counts, LineStyle style)
    {
        var steps = new StairStepSeries { Color = OxyColors.Black, StrokeThickness = style == LineStyle.Solid ? 2.5 : 1.5, LineStyle = style };
        steps.Points.AddRange(counts.Select((count, day) => new DataPoint(day, count)));
        return steps;
    }
}
