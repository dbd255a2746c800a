using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;
using OxyPlot.Series;

namespace Byrelaw.Reporting.Pictures;

/// <summary>The calendar as a timeline: one row for each sort of thing, calving left to the table because it lies far ahead.</summary>
internal static class CalendarPicture
{
    private static readonly (EntryKind[] Kinds, string Row)[] Rows =
    [
        ([EntryKind.TaskStart], "last days to start"),
        ([EntryKind.CleanTime], "clean time"),
        ([EntryKind.DonorTreatment], "donors treated"),
        ([EntryKind.Treatment, EntryKind.HeatWatch], "recipients treated"),
        ([EntryKind.Collection], "collection"),
        ([EntryKind.Transfer], "transfer"),
        ([EntryKind.StartOfMating], "start of mating"),
    ];

    /// <summary>The figure; empty where nothing is planned.</summary>
    public static string Of(PlanCalendar calendar, LocalDate today)
    {
        var rows = Rows.Select(row => (row.Row, Entries: calendar.Entries.Where(entry => row.Kinds.Contains(entry.Kind)).ToList())).Where(row => row.Entries.Count > 0).Reverse().ToList();
        if (rows.Count == 0)
        {
            return "";
        }

        var shown = rows.SelectMany(row => row.Entries).ToList();
        var first = LocalDate.Min(today, shown.Min(entry => entry.From)).PlusDays(-4);
        var last = shown.Max(entry => entry.To).PlusDays(6);
        var model = Chart.Empty();
        model.PlotMargins = new OxyThickness(132, 10, 16, 42);
        model.Axes.Add(DayAxis.Between(first, last));
        var axis = new CategoryAxis { Position = AxisPosition.Left, MinorTickSize = 0, MajorTickSize = 0, GapWidth = 0.5 };
        axis.Labels.AddRange(rows.Select(row => row.Row));
        model.Axes.Add(axis);
        for (var i = 0; i < rows.Count; i++)
        {
            foreach (var entry in rows[i].Entries)
            {
                model.Annotations.Add(Bar(first, entry, i));
            }
        }

        model.Annotations.Add(DayAxis.Mark(first, today, "today", LineStyle.Dash));
        return Chart.Figure(model, 70 + (34 * rows.Count), "The calendar as a timeline; the table above says the same in words", "Each mark is one entry of the table above, or of the tasks. Dashed line: the day of planning.");
    }

    private static RectangleAnnotation Bar(LocalDate first, PlanEntry entry, int row) => new()
    {
        MinimumX = DayAxis.Place(first, entry.From),
        MaximumX = DayAxis.Place(first, entry.To) + 1,
        MinimumY = row - 0.28,
        MaximumY = row + 0.28,
        Fill = entry.Kind == EntryKind.CleanTime ? OxyColor.FromAColor(60, OxyColors.Gray) : OxyColors.Black,
        Stroke = OxyColors.Black,
        StrokeThickness = 1,
    };
}
