namespace Byrelaw.Judging.Passing;

/// <summary>Of a condition about results of her mob.</summary>
internal sealed class MobBar : Bar
{
    private readonly HerdDays _days;
    private readonly WindowSet _windows;
    private readonly Bar _own;
    private readonly int[] _uncertainDays;

    /// <param name="days">The herd.</param>
    /// <param name="measure">What is measured.</param>
    /// <param name="windows">Of her mob.</param>
    /// <param name="own">What is hers.</param>
    public MobBar(HerdDays days, int measure, WindowSet windows, Bar own)
    {
        (_days, _windows, _own) = (days, windows, own);
        _uncertainDays = [.. UncertainDays(days.Herd, measure).Distinct().Order()];
    }

    public override bool May(int animal) => _uncertainDays.Length > 0 || _own.May(animal) || Array.Exists(_days.Herd.Mobs.Mob, mob => mob == MobStays.NotKnown);

    public override bool Is(int animal, int day)
    {
        var mobs = _days.Herd.Mobs;
        if (_own.Is(animal, day) || (mobs.StayAt(animal, day) is var stay and >= 0 && mobs.Mob[stay] == MobStays.NotKnown))
        {
            return true;
        }

        var until = int.MaxValue;
        var reading = _windows.Read(animal, day, ref until, null);
        var (low, high) = reading.IsKnown ? (reading.Together.Low, reading.Together.High) : (Day.Start, day);
        return Array.Exists(_uncertainDays, one => one >= low && one <= high);
    }

    /// <summary>Days with a result that is not known or vague, with several of one animal that differ, or with a row that may or may not be of a mob.</summary>
    private static IEnumerable<int> UncertainDays(Herd herd, int measure)
    {
        var (run, ofMobs, groups) = (herd.Runs[measure], herd.MobRuns[measure], herd.GroupRun(measure));
        for (var animal = 0; animal < herd.Count; animal++)
        {
            for (var i = run.Starts[animal]; i < run.Starts[animal + 1]; i++)
            {
                if (BadRecords.IsUncertain(run.Days, run.Low, run.High, run.Answers, Math.Max(run.Starts[animal], i - 1), i, run.Days[i]))
                {
                    yield return run.Days[i];
                }
            }
        }

        for (var i = 0; i < (ofMobs?.Days.Length ?? 0); i++)
        {
            if (ofMobs!.Low[i] < ofMobs.High[i])
            {
                yield return ofMobs.Days[i];
            }
        }

        foreach (var day in groups?.Days ?? [])
        {
            yield return day;
        }
    }
}
