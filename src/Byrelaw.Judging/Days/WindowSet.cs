using Byrelaw.Judging.Explaining;

namespace Byrelaw.Judging.Days;

/// <summary>The windows of one condition, none to two; an event must lie in all of them.</summary>
internal sealed class WindowSet(HerdDays days, WindowReader[] windows)
{
    /// <summary>A set's reading for one animal and day: each window on its own, for up to two.</summary>
    public readonly record struct Reading(Bounds First, bool FirstFromBirth, Bounds Second, bool SecondFromBirth);

    /// <summary>Reads all windows.</summary>
    /// <returns>False where one is anchored to something of which nothing is known.</returns>
    public bool Read(int animal, int day, bool strict, out Reading reading, ref int until, Notes? notes)
    {
        Bounds first = Bounds.All with { High = day }, second = Bounds.All;
        bool firstFromBirth = false, secondFromBirth = false;
        var known = windows.Length < 1 || windows[0].Read(animal, day, strict, out first, out firstFromBirth, ref until, notes);
        known &= windows.Length < 2 || windows[1].Read(animal, day, strict, out second, out secondFromBirth, ref until, notes);
        reading = new Reading(first, firstFromBirth, second, secondFromBirth);
        return known;
    }

    /// <summary>The days that count for one kind: all windows together, less the anchor's own day for the anchor's own kinds.</summary>
    public Bounds For(int kind, in Reading reading)
    {
        var bounds = windows.Length > 0 ? Own(windows[0], kind, reading.First, reading.FirstFromBirth) : reading.First;
        return windows.Length > 1 ? bounds.And(Own(windows[1], kind, reading.Second, reading.SecondFromBirth)) : bounds;
    }

    /// <summary>The days of all windows together, for a kind that no window is anchored to by itself.</summary>
    public static Bounds Together(in Reading reading) => reading.First.And(reading.Second);

    /// <summary>Every pair of first days that the windows may have, put together, for answers that do not move one way with the window.</summary>
    public List<Reading> Possible(int animal, int day, bool strict, in Reading reading)
    {
        var firsts = windows.Length > 0 ? windows[0].Lows(animal, day, strict, reading.First) : [reading.First.Low];
        var seconds = windows.Length > 1 ? windows[1].Lows(animal, day, strict, reading.Second) : [reading.Second.Low];
        var all = new List<Reading>(firsts.Count * seconds.Count);
        foreach (var a in firsts)
        {
            foreach (var b in seconds)
            {
                all.Add(reading with
                {
                    First = new Bounds(a, a, reading.First.High),
                    Second = new Bounds(b, b, reading.Second.High),
                });
            }
        }

        return all;
    }

    /// <summary>
    /// Lowers <paramref name="until"/> to the last day through which the windows, moving with the day of
    /// judging, meet no day that differs for this kind from the one before it.
    /// </summary>
    public void Limit(int animal, int day, int kind, bool strict, in Reading reading, ref int until)
    {
        LimitBy(new OwnEdges(days, animal, kind, strict), day, reading, ref until);
        var own = For(kind, reading);
        if (own.High < own.Low && own.High == day)
        {
            until = Math.Min(until, own.Low - 1);
        }
    }

    /// <summary>The same where the days that differ are not her own.</summary>
    public void LimitBy<TEdges>(TEdges edges, int day, in Reading reading, ref int until)
        where TEdges : struct, IEdges
    {
        until = Math.Min(until, edges.Next(day) - 1);
        for (var i = 0; i < windows.Length; i++)
        {
            var window = windows[i];
            var bounds = i == 0 ? reading.First : reading.Second;
            if (window.LowMoves is { } low)
            {
                until = Math.Min(until, low.After(edges.Next(bounds.Low) - 1));
            }

            if (window.HighMoves is { } high)
            {
                until = Math.Min(until, high.After(edges.Next(bounds.High)) - 1);
            }
        }

        LimitByEmptiness(day, reading, ref until);
    }

    private static Bounds Own(WindowReader window, int kind, Bounds bounds, bool fromBirth) =>
        window.SkipsAnchorDay && !fromBirth && window.Anchor!.Has(kind)
            ? bounds with { Low = bounds.Low + 1, LowLatest = bounds.LowLatest + 1 }
            : bounds;

    /// <summary>A window that holds no day at all is covered; it must not silently become one that holds some, or the other way round.</summary>
    private void LimitByEmptiness(int day, in Reading reading, ref int until)
    {
        var together = reading.First.And(reading.Second);
        var moving = false;
        for (var i = 0; i < windows.Length; i++)
        {
            moving |= windows[i].HighMoves is not null || windows[i].HighStands is not null || together.High < together.Low;
        }

        if (!moving)
        {
            return;
        }

        if (together.High < together.Low)
        {
            for (var i = 0; i < windows.Length; i++)
            {
                var bounds = i == 0 ? reading.First : reading.Second;
                if (bounds.High < together.Low && windows[i].HighStands is null)
                {
                    until = Math.Min(until, windows[i].HighMoves is { } high ? high.After(together.Low) - 1 : together.Low - 1);
                    return;
                }
            }

            return;
        }

        for (var i = 0; i < windows.Length; i++)
        {
            if (windows[i].LowMoves is { } low)
            {
                // Each window's last day either stands, and the first moves past it, or both move
                // and months of unequal length may let them cross: then go day by day.
                until = Math.Min(until, AnyHighMoves && together.High - together.Low < 8 ? day : low.After(together.High));
            }
        }
    }

    private bool AnyHighMoves => windows.Any(window => window.HighMoves is not null);
}
