using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;
using OxyPlot.Series;

namespace Byrelaw.Reporting.Pictures;

/// <summary>How many animals may be used, over the values of a number.</summary>
internal static class TuningPicture
{
    private const double Margin = 0.06;

    /// <summary>The figure; empty where no value changes who may be used.</summary>
    public static string Of(NumberTuning tuning, Rulebook rulebook)
    {
        if (!UsableBands.Any(tuning))
        {
            return "";
        }

        var rows = TuneRows.Of(tuning, rulebook);
        var (first, last) = Reach(rows.Select(row => (double)row.Value).ToList(), tuning);
        var model = Chart.Empty();
        model.Axes.Add(new LinearAxis
        {
            Position = AxisPosition.Bottom,
            Minimum = first,
            Maximum = last,
            MinorTickSize = 0,
            Title = NumberWords.Title(tuning.Number),
            MajorGridlineStyle = LineStyle.Dot,
            MajorGridlineColor = OxyColors.Gray,
            AxisTitleDistance = 8,
        });
        model.Axes.Add(Chart.Counting("animals", tuning.Steps.Max(step => step.Usable + step.Count(Answer.Ask))));
        model.Series.Add(Line(tuning, step => step.Usable + step.Count(Answer.Ask), LineStyle.Dash));
        model.Series.Add(Line(tuning, step => step.Usable, LineStyle.Solid));
        foreach (var row in rows.Where(row => !row.Marks.IsEmpty))
        {
            model.Annotations.Add(new LineAnnotation
            {
                Type = LineAnnotationType.Vertical,
                X = (double)row.Value,
                Color = OxyColors.Black,
                TextColor = OxyColors.Black,
                StrokeThickness = 1.5,
                LineStyle = row.IsNow ? LineStyle.Solid : LineStyle.Dot,
                Text = string.Join(", ", row.Marks),
            });
        }

        return Chart.Figure(
            model, 320, $"Animals that may be used, by {Phrases.Small(NumberWords.Title(tuning.Number))}: "
                + string.Join("; ", rows.Select(row => $"{NumberWords.Value(tuning.Number, row.Value)} {row.Step.Usable}{(row.IsNow ? " (now)" : "")}")),
            "Full line: Ready and On course. Dashed line: with those to ask about, if all turned out well. Upright lines: the value in force, and those of the layers below.");
    }

    /// <summary>The values shown: all that rows are shown for, and a little more on either side.</summary>
    private static (double First, double Last) Reach(List<double> values, NumberTuning tuning)
    {
        var room = Math.Max((values[^1] - values[0]) * Margin, tuning.Number.Number.IsWhole ? 1 : 0.05);
        var (first, last) = (values[0] - room, values[^1] + room);
        return (Math.Max(first, tuning.Number.Number.Lowest ?? first), Math.Min(last, tuning.Number.Number.Highest ?? last));
    }

    /// <summary>Upright where a step begins: a whole number's step lies from its first value to the next step's first.</summary>
    private static StairStepSeries Line(NumberTuning tuning, Func<TuningStep, int> count, LineStyle style)
    {
        var line = new StairStepSeries { Color = OxyColors.Black, StrokeThickness = style == LineStyle.Solid ? 2.5 : 1.5, LineStyle = style };
        foreach (var step in tuning.Steps)
        {
            line.Points.Add(new DataPoint((double)(step.Range.From ?? step.Range.To - 1 ?? 0), count(step)));
        }

        var end = tuning.Steps[^1];
        line.Points.Add(new DataPoint((double)(end.Range.To ?? end.Range.From + 1 ?? 1), count(end)));
        return line;
    }
}
