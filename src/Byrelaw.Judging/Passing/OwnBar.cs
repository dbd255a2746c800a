namespace Byrelaw.Judging.Passing;

/// <summary>Of a condition about her own records and facts.</summary>
/// <param name="days">The herd.</param>
/// <param name="bad">Its bad records.</param>
/// <param name="kinds">What is looked for in the windows.</param>
/// <param name="areCounted">Whether it matters that all of it is on record.</param>
/// <param name="anchors">The kinds that each window counts from.</param>
/// <param name="facts">Facts that are looked at.</param>
/// <param name="windows">The windows; null where there are none to look into.</param>
internal class OwnBar(HerdDays days, BadRecords bad, int[] kinds, bool areCounted, int[][] anchors, int[] facts, WindowSet? windows) : Bar
{
    private readonly bool _mayTouch = kinds.Concat(anchors.SelectMany(anchor => anchor)).Any(bad.Touch);

    public override bool May(int animal) =>
        _mayTouch || bad.HasUnreadableBirth(animal) || bad.IsNotBelieved(animal) || Array.Exists(facts, fact => bad.IsUnreadable(animal, fact))
        || Array.Exists(kinds, kind => bad.HasUncertainResult(animal, kind, Day.Start, Day.End));

    public override bool Is(int animal, int day) =>
        bad.HasUnreadableBirth(animal)
        || Array.Exists(facts, fact => bad.IsUnreadable(animal, fact))
        || Array.Exists(anchors, anchor => IsBad(anchor, animal, day))
        || (windows is not null && IsBadIn(windows, animal, day));

    /// <summary>Whether the last of these kinds may have been later for something that cannot be relied on.</summary>
    private bool IsBad(int[] anchor, int animal, int day)
    {
        var last = Day.Start;
        foreach (var kind in anchor)
        {
            var run = days.Herd.Runs[kind];
            var place = Runs.LastAtMost(run, animal, day);
            last = place >= run.Starts[animal] ? Math.Max(last, run.Days[place] + 1) : last;
        }

        return Array.Exists(anchor, kind => last <= day && (bad.HasGap(animal, kind, last, day) || bad.IsNotBelieved(animal, kind, last, day)));
    }

    private bool IsBadIn(WindowSet windows, int animal, int day)
    {
        var until = int.MaxValue;
        var reading = windows.Read(animal, day, ref until, null);
        foreach (var kind in kinds)
        {
            var (low, high) = (Day.Start, day);
            if (reading.IsKnown)
            {
                var bounds = windows.For(kind, reading);
                (low, high) = (bounds.Low, bounds.High);
            }

            if (low <= high
                && (bad.HasGap(animal, kind, low, high) || bad.HasUncertainResult(animal, kind, low, high) || (areCounted && bad.IsNotBelieved(animal, kind, low, high))))
            {
                return true;
            }
        }

        return false;
    }
}
