using OxyPlot;
using OxyPlot.Series;

namespace Byrelaw.Reporting.Pictures;

/// <summary>Recipients and donors that could be used, visit by visit.</summary>
internal static class VisitsPicture
{
    public static string Of(ImmutableArray<VisitOption> options)
    {
        var (first, last) = (options[0].Collection.PlusDays(-3), options[^1].Collection.PlusDays(3));
        var model = Chart.Empty();
        model.Axes.Add(DayAxis.Between(first, last));
        model.Axes.Add(Chart.Counting("animals", options.Max(option => Math.Max(option.Recipients.AtMost, option.Donors.AtMost))));
        model.Series.Add(Line(options.Select(option => new DataPoint(DayAxis.Place(first, option.Collection), option.Recipients.AtMost)), MarkerType.Circle, LineStyle.Solid));
        model.Series.Add(Line(options.Select(option => new DataPoint(DayAxis.Place(first, option.Collection), option.Donors.AtMost)), MarkerType.Square, LineStyle.Dash));
        return Chart.Figure(model, 260,
            "Animals that may be used, by visit: " + string.Join("; ", options.Select(option => $"{Dates.Long(option.Collection)}: {option.Recipients.AtMost} recipients, {option.Donors.AtMost} donors")),
            "Circles, full line: recipients. Squares, dashed line: donors. Those to ask about are among them.");
    }

    private static LineSeries Line(IEnumerable<DataPoint> points, MarkerType marker, LineStyle style)
    {
        var line = new LineSeries { Color = OxyColors.Black, LineStyle = style, StrokeThickness = 1.5, MarkerType = marker, MarkerSize = 4, MarkerFill = OxyColors.Black };
        line.Points.AddRange(points);
        return line;
    }
}
