namespace Byrelaw.Records.Building;

/// <summary>Sorts what was read of one kind into the columns of a herd.</summary>
internal static class KindRuns
{
    /// <summary>Entries of animals.</summary>
    public static KindRun Of(Kind kind, int animals, IReadOnlyList<EventStage> stages)
    {
        switch (kind)
        {
            case MeasureKind:
                var measured = SortedRun<AllowedRange>.Of(animals, [.. stages.Select(stage => stage.Measures[kind.Id])]);
                return Run(measured);
            case TestKind:
                var tested = SortedRun<byte>.Of(animals, [.. stages.Select(stage => stage.Tests[kind.Id])]);
                return Run(tested);
            case EventKind { IsMobMove: true }:
                return Run(SortedRun<int>.Of(animals, [.. stages.Select(stage => stage.Moves)], onceADay: true));
            default:
                return Run(SortedRun<Nothing>.Of(animals, [.. stages.Select(stage => stage.Events[kind.Id])], onceADay: true));
        }
    }

    /// <summary>Results that may or may not be each member's, or a sample of its mob; null where there are none.</summary>
    public static GroupRun? OfGroups(Kind kind, IEnumerable<GroupRow> groups)
    {
        GroupRow[] rows = [.. groups.Where(row => row.Kind == kind.Id && (kind is TestKind || row.Mob == GroupRow.WholeHerd || row.MayNotBeMeant)).OrderBy(row => row.Day).ThenBy(row => row.Line)];
        return rows.Length == 0 || kind is EventKind ? null : new GroupRun
        {
            Mobs = Array.ConvertAll(rows, row => row.Mob),
            Days = Array.ConvertAll(rows, row => row.Day),
            Lines = Array.ConvertAll(rows, row => row.Line),
            Answers = kind is TestKind ? Array.ConvertAll(rows, row => row.Answer) : [],
            Low = kind is MeasureKind ? Array.ConvertAll(rows, row => row.Range.Low) : [],
            High = kind is MeasureKind ? Array.ConvertAll(rows, row => row.Range.High) : [],
        };
    }

    /// <summary>Results of mobs.</summary>
    public static MobRun OfMobs(Kind kind, int mobs, IEnumerable<GroupRow> groups)
    {
        var rows = new ChunkedList<Staged<AllowedRange>>();
        foreach (var row in groups.Where(row => row.Kind == kind.Id && row.Mob != GroupRow.WholeHerd && !row.MayNotBeMeant))
        {
            rows.Add(new Staged<AllowedRange>(row.Mob, row.Day, row.Line, row.Range));
        }

        var run = SortedRun<AllowedRange>.Of(mobs, [rows]);
        return new MobRun { Starts = run.Starts, Days = run.Days, Lines = run.Lines, Low = Lows(run), High = Highs(run) };
    }

    /// <summary>The columns of sorted measured values.</summary>
    public static KindRun Run(SortedRun<AllowedRange> measured) => Columns(measured, low: Lows(measured), high: Highs(measured));

    /// <summary>The columns of sorted answers.</summary>
    public static KindRun Run(SortedRun<byte> tested) => Columns(tested, answers: tested.Results);

    /// <summary>The columns of sorted events.</summary>
    public static KindRun Run<TResult>(SortedRun<TResult> run)
        where TResult : struct => Columns(run);

    private static KindRun Columns<TResult>(SortedRun<TResult> run, double[]? low = null, double[]? high = null, byte[]? answers = null)
        where TResult : struct => new()
        {
            Starts = run.Starts,
            Days = run.Days,
            Lines = run.Lines,
            Low = low ?? [],
            High = high ?? [],
            Answers = answers ?? [],
        };

    private static double[] Lows(SortedRun<AllowedRange> run) => Array.ConvertAll(run.Results, range => range.Low);

    private static double[] Highs(SortedRun<AllowedRange> run) => Array.ConvertAll(run.Results, range => range.High);
}
