namespace Byrelaw.Records.Building;

/// <summary>
/// Builds the run of a kind with a filter out of the rows of its kind: the days whose details surely fit. A day whose details may fit
/// leaves a gap.
/// </summary>
internal static class FilteredRuns
{
    /// <summary>Entries of animals.</summary>
    /// <param name="kind">With a filter.</param>
    /// <param name="animals">How many there are.</param>
    /// <param name="stages">What was read of its kind.</param>
    /// <param name="details">What more is on record.</param>
    /// <param name="doubts">Takes a gap for each day that may be one of its entries.</param>
    public static KindRun Of(Kind kind, int animals, IReadOnlyList<EventStage> stages, EntryDetails details, List<Gap> doubts)
    {
        var of = kind.Declaration.Id;
        switch (kind)
        {
            case MeasureKind:
                var measured = SortedRun<AllowedRange>.Of(animals, [.. stages.Select(stage => stage.Measures[of])]);
                return KindRuns.Run(Kept(kind, measured, details, doubts));
            case TestKind:
                var tested = SortedRun<byte>.Of(animals, [.. stages.Select(stage => stage.Tests[of])]);
                return KindRuns.Run(Kept(kind, tested, details, doubts));
            case EventKind { IsMobMove: true }:
                return KindRuns.Run(OnceADay(Kept(kind, SortedRun<int>.Of(animals, [.. stages.Select(stage => stage.Moves)]), details, doubts)));
            default:
                return KindRuns.Run(OnceADay(Kept(kind, SortedRun<Nothing>.Of(animals, [.. stages.Select(stage => stage.Events[of])]), details, doubts)));
        }
    }

    /// <summary>Rows of mobs: of a day that may be meant, a sample that may be there or not, with a result that nobody knows.</summary>
    public static IEnumerable<GroupRow> OfMobs(Kind kind, IEnumerable<GroupRow> groups, EntryDetails details)
    {
        if (kind.Filter is not { } filter)
        {
            return groups;
        }

        var kept = new List<GroupRow>();
        foreach (var day in groups.Where(row => row.Kind == filter.Of.Id).GroupBy(row => (row.Mob, row.Day)))
        {
            var fit = day.Select(row => DetailFit.Of(filter, row.Line, details)).Aggregate(DetailFit.Together);
            if (fit == Fit.Yes)
            {
                kept.AddRange(day.Select(row => row with { Kind = kind.Id }));
            }
            else if (fit == Fit.Perhaps)
            {
                kept.Add(day.First() with { Kind = kind.Id, Range = AllowedRange.NotKnown, Answer = KindRun.NotKnown, MayNotBeMeant = true });
            }
        }

        return kept;
    }

    private static SortedRun<T> Kept<T>(Kind kind, SortedRun<T> run, EntryDetails details, List<Gap> doubts)
        where T : struct
    {
        var hasResults = run.Results.Length > 0;
        var starts = new int[run.Starts.Length];
        var kept = 0;
        for (var animal = 0; animal + 1 < run.Starts.Length; animal++)
        {
            starts[animal] = kept;
            for (var from = run.Starts[animal]; from < run.Starts[animal + 1];)
            {
                var (to, fit) = (from, DetailFit.Of(kind.Filter!, run.Lines[from], details));
                for (to++; to < run.Starts[animal + 1] && run.Days[to] == run.Days[from]; to++)
                {
                    fit = DetailFit.Together(fit, DetailFit.Of(kind.Filter!, run.Lines[to], details));
                }

                if (fit == Fit.Perhaps)
                {
                    doubts.Add(new Gap(animal, kind.Id, run.Days[from], run.Days[from], run.Lines[from]) { IsOfDetails = true });
                }

                for (; from < to; from++)
                {
                    if (fit == Fit.Yes)
                    {
                        (run.Days[kept], run.Lines[kept]) = (run.Days[from], run.Lines[from]);
                        if (hasResults)
                        {
                            run.Results[kept] = run.Results[from];
                        }

                        kept++;
                    }
                }
            }
        }

        starts[^1] = kept;
        return new SortedRun<T>(starts, run.Days[..kept], run.Lines[..kept], hasResults ? run.Results[..kept] : []);
    }

    private static SortedRun<T> OnceADay<T>(SortedRun<T> run)
        where T : struct
    {
        var starts = new int[run.Starts.Length];
        var kept = new List<int>(run.Days.Length);
        for (var animal = 0; animal + 1 < run.Starts.Length; animal++)
        {
            starts[animal] = kept.Count;
            for (var i = run.Starts[animal]; i < run.Starts[animal + 1]; i++)
            {
                if (i == run.Starts[animal] || run.Days[i] != run.Days[i - 1])
                {
                    kept.Add(i);
                }
            }
        }

        starts[^1] = kept.Count;
        return new SortedRun<T>(starts, [.. kept.Select(i => run.Days[i])], [.. kept.Select(i => run.Lines[i])], run.Results.Length == 0 ? [] : [.. kept.Select(i => run.Results[i])]);
    }
}
