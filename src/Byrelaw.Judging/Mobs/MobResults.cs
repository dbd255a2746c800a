namespace Byrelaw.Judging.Mobs;

/// <summary>All results of one measure by mob: mob rows, and animals' own while they were in it.</summary>
internal sealed class MobResults
{
    private readonly MobResult[][] _byMob;
    private readonly MobResult[] _unplaced;
    private readonly Dictionary<(int Mob, int From, int To), MobSample> _samples = [];

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

        _byMob = [.. mobs.Select(Sorted)];
        _unplaced = Sorted(unplaced);
    }

    /// <summary>What was sampled of a mob on the days given. Remembered: her whole mob asks the same.</summary>
    public MobSample Of(int mob, int from, int to)
    {
        if (!_samples.TryGetValue((mob, from, to), out var sample))
        {
            _samples[(mob, from, to)] = sample = MobSample.Of(Between(_byMob[mob], from, to), Between(_unplaced, from, to));
        }

        return sample;
    }

    /// <summary>Every sample that any stretch of days may give: for each mob, all between two days with results.</summary>
    public IEnumerable<MobSample> All()
    {
        for (var mob = 0; mob < _byMob.Length; mob++)
        {
            var days = _byMob[mob].Concat(_unplaced).Select(result => result.Day).Distinct().Order().ToList();
            for (var from = 0; from < days.Count; from++)
            {
                for (var to = from; to < days.Count; to++)
                {
                    yield return Of(mob, days[from], days[to]);
                }
            }
        }
    }

    /// <summary>The first day after <paramref name="day"/> that differs from the one before it by a result of the mob's.</summary>
    public int NextEdge(int mob, int day) => Math.Min(NextEdge(_byMob[mob], day), NextEdge(_unplaced, day));

    private static MobResult[] Sorted(List<MobResult> results) =>
        [.. results.OrderBy(result => result.Day).ThenBy(result => result.Line).ThenBy(result => result.Animal)];

    private static ReadOnlySpan<MobResult> Between(MobResult[] results, int from, int to)
    {
        var start = Array.FindIndex(results, result => result.Day >= from);
        var end = Array.FindLastIndex(results, result => result.Day <= to);
        return start < 0 || end < start ? [] : results.AsSpan(start, end - start + 1);
    }

    private static int NextEdge(MobResult[] results, int day)
    {
        foreach (var result in results)
        {
            if (result.Day == day)
            {
                return day + 1;
            }

            if (result.Day > day)
            {
                return result.Day;
            }
        }

        return int.MaxValue;
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
}
