namespace Byrelaw.Judging.Mobs;

/// <summary>
/// Results of a test that are written for a mob or the herd, and may or may not be each member's: an answer holds if it holds either way,
/// so none of them proves anything of one animal.
/// </summary>
internal sealed class GroupSamples
{
    private readonly HerdDays _days;
    private readonly GroupRun _run;

    private GroupSamples(HerdDays days, GroupRun run)
    {
        _days = days;
        _run = run;
    }

    /// <summary>Those of a kind; null where there are none.</summary>
    public static GroupSamples? Of(HerdDays days, int kind) => days.Herd.GroupRun(kind) is { Answers.Length: > 0 } run ? new GroupSamples(days, run) : null;

    /// <summary>The days of all rows.</summary>
    public GroupDays Edges => new(_run.Days);

    /// <summary>The day of a row.</summary>
    public int DayOf(int place) => _run.Days[place];

    /// <summary>The answer of a row.</summary>
    public byte AnswerOf(int place) => _run.Answers[place];

    /// <summary>The line of a row.</summary>
    public int LineOf(int place) => _run.Lines[place];

    /// <summary>The place of the last row on or before a day that may be an animal's, and is before another place.</summary>
    /// <param name="animal">Whose it may be.</param>
    /// <param name="from">The first day looked at.</param>
    /// <param name="to">The last.</param>
    /// <param name="before">Places before this one only.</param>
    /// <returns>-1 for none.</returns>
    public int Last(int animal, int from, int to, int before = int.MaxValue)
    {
        var place = Math.Min(Runs.LastAtMost(_run.Days, 0, _run.Days.Length - 1, to), before - 1);
        while (place >= 0 && _run.Days[place] >= from)
        {
            if (MayBeHers(animal, place))
            {
                return place;
            }

            place--;
        }

        return -1;
    }

    private bool MayBeHers(int animal, int place)
    {
        var (day, mob) = (_run.Days[place], _run.Mobs[place]);
        if (day < _days.Herd.BornEarliest[animal] || _days.Herd.Membership.At(animal, day) == Presence.Out)
        {
            return false;
        }

        var hers = _days.Where.On(animal, day, strict: false);
        return mob == MobStays.NotKnown || hers == mob || hers == MobStays.NotKnown
            || _days.Where.MorningOf(animal, day, strict: false) is var morning && (morning == mob || morning == MobStays.NotKnown);
    }
}

/// <summary>Days with a row.</summary>
internal readonly struct GroupDays(int[] days) : IEdges
{
    public int Next(int day)
    {
        var last = Runs.LastAtMost(days, 0, days.Length - 1, day);
        return last >= 0 && days[last] == day ? day + 1 : last + 1 < days.Length ? days[last + 1] : int.MaxValue;
    }
}

/// <summary>Days that differ for one kind of either sort.</summary>
internal readonly struct WithGroupDays<TEdges>(TEdges own, GroupSamples?[] groups) : IEdges
    where TEdges : struct, IEdges
{
    public int Next(int day)
    {
        var next = own.Next(day);
        foreach (var group in groups)
        {
            next = group is null ? next : Math.Min(next, group.Edges.Next(day));
        }

        return next;
    }
}
