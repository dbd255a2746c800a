namespace Byrelaw.Reporting.Pages;

/// <summary>An animal's year, past and to come, on one axis: what is on record, a lane for each kind, and when she may be treated and may carry.</summary>
internal static class HerYear
{
    private const int WeeksAfter = 6;
    private const int MostDays = 4;

    public static Lanes? Of(HerReports her)
    {
        var list = her.Main.On;
        if (!list.Herd.ReachesADay)
        {
            return null;
        }

        var transfers = HerdStrip.TransfersOf(list);
        var last = her.All.Select(report => report.On.List.Choice.JudgedTo).Concat(transfers).Append(list.Herd.KnownDay).Max();
        var axis = new YearAxis(list.Herd.KnownDay.PlusYears(-1), last.PlusWeeks(WeeksAfter), list.Herd.KnownDay, transfers);
        return new Lanes(axis, [.. OnRecord(her, axis), .. InCalfOn(her, axis), .. her.OfMainSession.Select(report => Ahead(report, axis))]);
    }

    /// <summary>What some rule looks at and is on record of her: her calvings, heats and services first.</summary>
    private static IEnumerable<Lane> OnRecord(HerReports her, YearAxis axis)
    {
        var known = HerEvents.Of(her.Main.On.Herd.Vocabulary);
        foreach (var kind in known.Select(one => one.Kind).Concat(her.OfMainSession.SelectMany(report => report.On.Kinds)).DistinctBy(kind => kind.Id).Where(kind => kind is not EventKind { IsMobMove: true }))
        {
            var run = her.Main.On.Herd.Runs[kind.Id];
            var places = Enumerable.Range(run.Starts[her.Main.Animal.Animal], run.Starts[her.Main.Animal.Animal + 1] - run.Starts[her.Main.Animal.Animal]).Where(place => axis.Holds(Day.Date(run.Days[place]))).ToList();
            if (places.Count > 0)
            {
                var sign = known.FirstOrDefault(one => one.Kind.Id == kind.Id) is { Kind: not null } drawn ? drawn.Sign : kind is EventKind ? DayMarkKind.Unwanted : DayMarkKind.Looked;
                var more = places.Count > MostDays ? $"{Numbers.Count(places.Count - MostDays, "time", "times")} before, " : "";
                yield return new Lane(Phrases.Sentence(kind.Name), more + string.Join(", ", places.TakeLast(MostDays).Select(place => Said(run, place, kind, her.Main.On))),
                    [.. places.Select(place => axis.At(Day.Date(run.Days[place]))).Select(day => new DayMark(sign, day, day))]);
            }
        }
    }

    private static string Said(KindRun run, int place, Kind kind, ListReport list)
    {
        var day = list.Short(Day.Date(run.Days[place]));
        return kind switch
        {
            TestKind test => $"{(run.Answers[place] < test.Answers.Length ? test.Answers[run.Answers[place]] : "result not known")} {day}",
            MeasureKind when run.Low[place] == run.High[place] => $"{Numbers.Of(run.Low[place])} on {day}",
            MeasureKind when double.IsInfinity(run.Low[place]) && double.IsInfinity(run.High[place]) => $"result not known, {day}",
            MeasureKind => $"about {Numbers.Of(double.IsInfinity(run.Low[place]) ? run.High[place] : run.Low[place])} on {day}",
            _ => day,
        };
    }

    /// <summary>What the floor says of her on the days that are judged: on other days nobody has asked.</summary>
    private static IEnumerable<Lane> InCalfOn(HerReports her, YearAxis axis) => her.All.Where(report => report.Animal.InCalf != InCalf.NotTold)
        .GroupBy(report => report.Animal.InCalf).OrderByDescending(group => group.Key)
        .Select(group => new Lane(InCalfWords.OfMany(group.Key), $"on {Phrases.And([.. group.OrderBy(report => report.On.List.Choice.JudgedFrom).Select(report => (report.On.List.Choice, report.On)).Select(one => one.On.Short(one.Choice.JudgedFrom) + (one.Choice.JudgedTo > one.Choice.JudgedFrom ? $" to {one.On.Short(one.Choice.JudgedTo)}" : "")).Distinct()])}",
            [.. group.Select(report => new DayMark(DayMarkKind.NotKnown, axis.At(report.On.List.Choice.JudgedFrom), axis.At(report.On.List.Choice.JudgedTo.PlusDays(1))))]));

    private static Lane Ahead(AnimalReport report, YearAxis axis)
    {
        var marks = ImmutableArray.CreateBuilder<DayMark>();
        HerdStrip.AddStretches(marks, report.Animal.Timeline, axis, fails: true);
        var name = report.On.Rulebook.Programme is { } programme && ProgrammeLists.Recipients(programme)?.List == report.On.Name ? "May carry" : report.On.IsForTreatment ? "May be treated" : $"On the list {report.On.Name}";
        return new Lane(name, TimelineWords.Of(report.Animal.Timeline), marks.ToImmutable());
    }
}
