namespace Byrelaw.Reporting.Pictures;

/// <summary>An animal's last half year and the sessions to come as marks on one axis, for her row.</summary>
internal static class HerdStrip
{
    private const int WeeksBack = 26;
    private const int WeeksAfter = 4;

    /// <summary>From 26 weeks before the day that the records reach to four weeks after the last session; null where they reach no day.</summary>
    public static YearAxis? AxisOf(ListReport list)
    {
        if (!list.Herd.ReachesADay)
        {
            return null;
        }

        var transfers = TransfersOf(list);
        var last = transfers.Append(list.List.Choice.JudgedTo).Append(list.Herd.KnownDay).Max();
        return new YearAxis(list.Herd.KnownDay.PlusWeeks(-WeeksBack), last.PlusWeeks(WeeksAfter), list.Herd.KnownDay, transfers);
    }

    /// <summary>The first day of each session's transfers; of a programme without sessions the judging day.</summary>
    public static ImmutableArray<LocalDate> TransfersOf(ListReport list) =>
        list.Rulebook.Programme is { } programme && Session.Of(programme) is { IsEmpty: false } sessions ? [.. sessions.Select(session => session.FirstTransfer)] : [list.List.Choice.JudgedFrom];

    /// <summary>Her marks.</summary>
    public static ImmutableArray<DayMark> Of(AnimalReport report, YearAxis axis)
    {
        var marks = ImmutableArray.CreateBuilder<DayMark>();
        var known = HerEvents.Of(report.On.Herd.Vocabulary);
        foreach (var (sign, kind) in known)
        {
            Add(marks, report, kind, sign, axis);
        }

        foreach (var kind in report.On.UnwantedKinds.Where(kind => known.All(one => one.Kind.Id != kind.Id)))
        {
            Add(marks, report, kind, DayMarkKind.Unwanted, axis);
        }

        AddStretches(marks, report.Animal.Timeline, axis, fails: false);
        return marks.ToImmutable();
    }

    /// <summary>The stretches of a timeline from the axis' today on.</summary>
    public static void AddStretches(ImmutableArray<DayMark>.Builder marks, Timeline timeline, YearAxis axis, bool fails)
    {
        for (var i = 0; i < timeline.Stretches.Length; i++)
        {
            var stretch = timeline.Stretches[i];
            var end = i + 1 < timeline.Stretches.Length ? timeline.Stretches[i + 1].From : timeline.Last.PlusDays(1);
            var (from, to) = (axis.At(stretch.From), axis.At(end));
            if (to > from && (fails || stretch.Truth != Truth.False))
            {
                marks.Add(new DayMark(stretch.Truth switch { Truth.True => DayMarkKind.Holds, Truth.False => DayMarkKind.Fails, _ => DayMarkKind.NotKnown }, from, to));
            }
        }
    }

    private static void Add(ImmutableArray<DayMark>.Builder marks, AnimalReport report, Kind kind, DayMarkKind drawn, YearAxis axis)
    {
        foreach (var day in report.On.Herd.Runs[kind.Id].DaysOf(report.Animal.Animal))
        {
            if (Day.Date(day) is var date && axis.Holds(date))
            {
                marks.Add(new DayMark(drawn, axis.At(date), axis.At(date)));
            }
        }
    }
}
