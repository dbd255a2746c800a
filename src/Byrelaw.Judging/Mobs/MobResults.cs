namespace Byrelaw.Judging.Mobs;

/// <summary>All results of one measure by mob: mob rows, and animals' own while they were in it.</summary>
internal sealed class MobResults
{
    private readonly MobResult[][] _byMob;

    /// <summary>By mob: what may be of it or not.</summary>
    private readonly MobResult[][] _unplaced;
    private readonly Dictionary<(int Mob, int From, int To), MobSample> _samples = [];
    private readonly int[] _gapEdges;

    /// <summary>Whether a row that could not be read may be a sample of a mob in some days, where that has been asked.</summary>
    public Dictionary<(int Mob, int From, int To), bool> Unreadable { get; } = [];

    public MobResults(Herd herd, int kind)
    {
        var mobs = new List<MobResult>[herd.Mobs.Names.Length];
        for (var mob = 0; mob < mobs.Length; mob++)
        {
            mobs[mob] = [];
        }

        var unplaced = new List<MobResult>();
        if (herd.MobRuns[kind] is { } rows)
        {
            for (var mob = 0; mob < mobs.Length; mob++)
            {
                for (var i = rows.Starts[mob]; i < rows.Starts[mob + 1]; i++)
                {
                    mobs[mob].Add(new MobResult(rows.Days[i], MobResult.NoAnimal, rows.Low[i], rows.High[i], rows.Lines[i]));
                }
            }
        }

        var run = herd.Runs[kind];
        for (var animal = 0; animal < herd.Count; animal++)
        {
            for (var i = run.Starts[animal]; i < run.Starts[animal + 1]; i++)
            {
                var mob = herd.Mobs.At(animal, run.Days[i]);
                (mob < 0 ? unplaced : mobs[mob]).Add(new MobResult(run.Days[i], animal, run.Low[i], run.High[i], run.Lines[i]));
            }
        }

        // A result of the herd may be of one animal of any mob, or of none.
        var groups = herd.GroupRun(kind);
        var ofOneMob = new List<(int Mob, MobResult Result)>();
        for (var i = 0; i < (groups?.Days.Length ?? 0); i++)
        {
            var result = new MobResult(groups!.Days[i], MobResult.NoAnimal, groups.Low[i], groups.High[i], groups.Lines[i]);
            if (groups.Mobs[i] < 0)
            {
                unplaced.Add(result);
            }
            else
            {
                ofOneMob.Add((groups.Mobs[i], result));
            }
        }

        _byMob = [.. mobs.Select(Sorted)];
        var ofAnyMob = Sorted(unplaced);
        _unplaced = [.. mobs.Select((_, mob) => ofOneMob.Exists(one => one.Mob == mob)
            ? Sorted([.. unplaced, .. ofOneMob.Where(one => one.Mob == mob).Select(one => one.Result)]) : ofAnyMob)];
        _gapEdges = GapEdges(herd, kind);
    }

    /// <summary>What was sampled of a mob on the days given. Remembered: her whole mob asks the same.</summary>
    public MobSample Sampled(int mob, int from, int to)
    {
        if (!_samples.TryGetValue((mob, from, to), out var sample))
        {
            _samples[(mob, from, to)] = sample = MobSample.Of(Between(_byMob[mob], from, to), Between(_unplaced[mob], from, to));
        }

        return sample;
    }

    /// <summary>Every sample that any stretch of days may give: for each mob, all between two days with results.</summary>
    public IEnumerable<MobSample> All()
    {
        for (var mob = 0; mob < _byMob.Length; mob++)
        {
            var days = _byMob[mob].Concat(_unplaced[mob]).Select(result => result.Day).Distinct().Order().ToList();
            for (var from = 0; from < days.Count; from++)
            {
                for (var to = from; to < days.Count; to++)
                {
                    yield return Sampled(mob, days[from], days[to]);
                }
            }
        }
    }

    /// <summary>The first day after <paramref name="day"/> that differs from the one before it by a result of the mob's.</summary>
    public int NextEdge(int mob, int day) => Math.Min(NextEdge(_byMob[mob], day), NextEdge(_unplaced[mob], day));

    /// <summary>The first day after <paramref name="day"/> that differs by a row that could not be read: the days it may be of, and those on
    /// which its animal changes mobs.</summary>
    public int NextGapEdge(int day)
    {
        var place = Array.BinarySearch(_gapEdges, day + 1);
        place = place < 0 ? ~place : place;
        return place < _gapEdges.Length ? _gapEdges[place] : int.MaxValue;
    }

    private static int[] GapEdges(Herd herd, int kind)
    {
        var edges = new SortedSet<int>();
        var animals = new HashSet<int>();
        foreach (var gap in herd.Coverage.HasGaps[kind] ? herd.Coverage.Gaps : [])
        {
            if (gap.Kind == kind || gap.Kind < 0)
            {
                edges.UnionWith([gap.From, gap.To + 1]);
                if (gap.Animal >= 0 && animals.Add(gap.Animal))
                {
                    edges.UnionWith(herd.Mobs.From[herd.Mobs.Starts[gap.Animal]..herd.Mobs.Starts[gap.Animal + 1]]);
                }
            }
        }

        return [.. edges];
    }

    private static MobResult[] Sorted(List<MobResult> results) =>
        [.. results.OrderBy(result => result.Day).ThenBy(result => result.Line).ThenBy(result => result.Animal)];

    private static ReadOnlySpan<MobResult> Between(MobResult[] results, int from, int to)
    {
        var (start, end) = (FirstFrom(results, from), FirstFrom(results, to + 1));
        return end <= start ? [] : results.AsSpan(start, end - start);
    }

    private static int NextEdge(MobResult[] results, int day)
    {
        var next = FirstFrom(results, day);
        return next == results.Length ? int.MaxValue : results[next].Day == day ? day + 1 : results[next].Day;
    }

    /// <summary>The place of the first result on or after a day.</summary>
    private static int FirstFrom(MobResult[] results, int day)
    {
        var (low, high) = (0, results.Length);
        while (low < high)
        {
            var middle = (low + high) >>> 1;
            (low, high) = results[middle].Day < day ? (middle + 1, high) : (low, middle);
        }

        return low;
    }
}

/// <summary>One result.</summary>
/// <param name="Day">When.</param>
/// <param name="Animal">Whose; <see cref="NoAnimal"/> for a mob row, which stands for one animal nobody named.</param>
/// <param name="Low">Lowest value it allows.</param>
/// <param name="High">Highest value it allows.</param>
/// <param name="Line">Where it is on record.</param>
internal readonly record struct MobResult(int Day, int Animal, double Low, double High, int Line)
{
    public const int NoAnimal = -1;

    /// <summary>Whether nothing is known of it.</summary>
    public bool IsPending => double.IsInfinity(Low) && double.IsInfinity(High);
}
