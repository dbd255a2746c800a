using Byrelaw.Records.Herds;

namespace Byrelaw.Judging.Days;

/// <summary>Asks a herd's columns what the criteria need to know of days.</summary>
internal sealed class HerdDays(Herd herd)
{
    public Herd Herd { get; } = herd;

    public Coverage Coverage { get; } = herd.Coverage;

    /// <summary>The day the records reach.</summary>
    public int KnownDay { get; } = herd.Coverage.KnownDay;

    /// <summary>The first day after <paramref name="day"/> on which coverage may differ from the day before it.</summary>
    public int NextCoverageEdge(int animal, int kind, int day, bool strict)
    {
        var edge = int.MaxValue;
        var needed = Coverage.NeededFrom[kind][animal];
        if (needed > day)
        {
            edge = needed;
        }

        var start = Math.Max(Coverage.Since[kind], Coverage.Joined[animal]);
        if (start > day && start < edge)
        {
            edge = start;
        }

        var left = Coverage.Left[animal];
        if (left >= day && left + 1 < edge)
        {
            edge = left + 1;
        }

        if (strict && KnownDay >= day && KnownDay + 1 < edge)
        {
            edge = KnownDay + 1;
        }

        return Coverage.HasGaps[kind] ? Math.Min(edge, NextGapEdge(animal, kind, day)) : edge;
    }

    /// <summary>
    /// The first day after <paramref name="day"/> that differs, for this kind, from the day before it:
    /// by an event on either, or in coverage.
    /// </summary>
    public int NextEdge(int animal, int kind, int day, bool strict)
    {
        var run = Herd.Runs[kind];
        var last = Runs.LastAtMost(run, animal, day);
        var edge = NextCoverageEdge(animal, kind, day, strict);
        if (last >= run.Starts[animal] && run.Days[last] == day)
        {
            return Math.Min(edge, day + 1);
        }

        return last + 1 < run.Starts[animal + 1] ? Math.Min(edge, run.Days[last + 1]) : edge;
    }

    /// <summary>The first day from <paramref name="from"/> to <paramref name="to"/> that is not covered; int.MaxValue where all are.</summary>
    public int FirstUncovered(int animal, int kind, int from, int to, bool strict)
    {
        var day = from;
        while (day <= to)
        {
            if (!Coverage.Covers(animal, kind, day, day, strict))
            {
                return day;
            }

            day = NextCoverageEdge(animal, kind, day, strict);
        }

        return int.MaxValue;
    }

    /// <summary>The last day from <paramref name="from"/> to <paramref name="to"/> that is not covered; int.MinValue where all are.</summary>
    public int LastUncovered(int animal, int kind, int from, int to, bool strict)
    {
        var last = int.MinValue;
        var day = from;
        while (day <= to)
        {
            var next = NextCoverageEdge(animal, kind, day, strict);
            if (!Coverage.Covers(animal, kind, day, day, strict))
            {
                last = Math.Min(next - 1, to);
            }

            day = next;
        }

        return last;
    }

    private int NextGapEdge(int animal, int kind, int day)
    {
        var edge = int.MaxValue;
        foreach (var gap in Coverage.Gaps)
        {
            if ((gap.Kind == kind || gap.Kind < 0) && (gap.Animal == animal || gap.Animal < 0))
            {
                if (gap.From > day)
                {
                    edge = Math.Min(edge, gap.From);
                }

                if (gap.To >= day)
                {
                    edge = Math.Min(edge, gap.To + 1);
                }
            }
        }

        return edge;
    }
}
