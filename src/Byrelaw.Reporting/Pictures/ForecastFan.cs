using Byrelaw.Planning.Forecasting;
using OxyPlot;
using OxyPlot.Axes;
using OxyPlot.Series;

namespace Byrelaw.Reporting.Pictures;

/// <summary>What may come of a season, stage by stage: the middle outcome and how far it may go either way.</summary>
internal static class ForecastFan
{
    /// <summary>The figure; embryos and what becomes of them: eggs would dwarf the calves, and recipients are no stage of an embryo.</summary>
    public static string Of(Forecast forecast)
    {
        var stages = forecast.Stages.Where(stage => stage.Stage >= Stage.Embryos && stage.Stage != Stage.Recipients).ToArray();
        var model = Chart.Empty();
        var axis = new CategoryAxis { Position = AxisPosition.Bottom, IsTickCentered = true, MinorTickSize = 0 };
        axis.Labels.AddRange(stages.Select(stage => PlanWords.Short(stage.Stage)));
        model.Axes.Add(axis);
        model.Axes.Add(Chart.Counting("how many", stages.Max(stage => stage.Counts.Quantile(0.9))));
        model.Series.Add(Band(stages, 0.1, 0.9, 40));
        model.Series.Add(Band(stages, 0.25, 0.75, 70));
        model.Series.Add(Middle(stages));
        return Chart.Figure(
            model, 320, "Forecast by stage: " + string.Join("; ", stages.Select(stage =>
                $"{PlanWords.Short(stage.Stage)} {stage.Counts.Quantile(0.5)}, from {stage.Counts.Quantile(0.1)} to {stage.Counts.Quantile(0.9)}")),
            "Line: the middle outcome. Dark band: half of all seasons. Light band: eight seasons in ten.");
    }

    private static AreaSeries Band(StageForecast[] stages, double low, double high, byte ink)
    {
        var band = new AreaSeries { Color = OxyColors.Gray, Color2 = OxyColors.Gray, StrokeThickness = 1, Fill = OxyColor.FromAColor(ink, OxyColors.Gray) };
        for (var i = 0; i < stages.Length; i++)
        {
            band.Points.Add(new DataPoint(i, stages[i].Counts.Quantile(high)));
            band.Points2.Add(new DataPoint(i, stages[i].Counts.Quantile(low)));
        }

        return band;
    }

    private static LineSeries Middle(StageForecast[] stages)
    {
        var line = new LineSeries
        {
            Color = OxyColors.Black,
            StrokeThickness = 2,
            MarkerType = MarkerType.Circle,
            MarkerSize = 4,
            MarkerFill = OxyColors.Black,
            LabelFormatString = "{1:0}",
        };
        line.Points.AddRange(stages.Select((stage, i) => new DataPoint(i, stage.Counts.Quantile(0.5))));
        return line;
    }
}
