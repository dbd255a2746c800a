using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;

namespace Byrelaw.Reporting.Pictures;

/// <summary>Days along the bottom of a chart, counted from the first.</summary>
internal static class DayAxis
{
    /// <summary>The axis, with a tick where each month begins.</summary>
    public static LinearAxis Between(LocalDate first, LocalDate last)
    {
        var months = new List<double>();
        for (var month = new LocalDate(first.Year, first.Month, 1); month <= last; month = month.PlusMonths(1))
        {
            months.Add(Place(first, month));
        }

        return new MonthAxis(first, months)
        {
            Position = AxisPosition.Bottom,
            Minimum = 0,
            Maximum = Place(first, last),
            MinorTickSize = 0,
            MajorGridlineStyle = LineStyle.Dot,
            MajorGridlineColor = OxyColors.Gray,
        };
    }

    /// <summary>Where a day lies.</summary>
    public static double Place(LocalDate first, LocalDate day) => Period.DaysBetween(first, day);

    /// <summary>An upright line on a day, with words at its top.</summary>
    public static LineAnnotation Mark(LocalDate first, LocalDate day, string words, LineStyle style) => new()
    {
        Type = LineAnnotationType.Vertical,
        X = Place(first, day),
        Color = OxyColors.Black,
        LineStyle = style,
        Text = words,
        TextColor = OxyColors.Black,
        StrokeThickness = 1.5,
    };

    /// <summary>Ticks at the beginning of months that have room for their names.</summary>
    private sealed class MonthAxis(LocalDate first, List<double> months) : LinearAxis
    {
        public override void GetTickValues(out IList<double> majorLabelValues, out IList<double> majorTickValues, out IList<double> minorTickValues)
        {
            var step = Math.Max(1, (int)Math.Ceiling(months.Count / 12.0));
            var shown = months.Where((place, i) => place >= ActualMinimum && i % step == 0).ToList();
            (majorLabelValues, majorTickValues, minorTickValues) = (shown, shown, []);
        }

        protected override string FormatValueOverride(double x)
        {
            var month = first.PlusDays((int)x);
            return month.Month == 1 ? $"{month.Year}" : Dates.ShortMonth(month.Month);
        }
    }
}
