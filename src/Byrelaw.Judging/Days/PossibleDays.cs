namespace Byrelaw.Judging.Days;

/// <summary>
/// The first days that two windows may have, where an anchor may have been on any of many days. Of days that nothing tells apart one
/// is looked at: from it to the next day that differs, in the records or in what may have happened, the answer is one. So the work grows
/// with what is on record, not with the days that are not.
/// </summary>
/// <param name="days">The herd.</param>
/// <param name="animal">Whose.</param>
/// <param name="strict">Coverage stops at the known day.</param>
internal readonly struct PossibleDays(HerdDays days, int animal, bool strict)
{
    /// <summary>Pairs of first days, of which each stands for all that give the same answer.</summary>
    /// <param name="first">The first window.</param>
    /// <param name="second">The second; null where there is one window only.</param>
    /// <param name="reading">How they read.</param>
    /// <param name="day">The day of judging.</param>
    /// <param name="edges">The days that differ, for what is looked for in the windows.</param>
    public List<(int First, int Second)> Pairs<TEdges>(WindowReader first, WindowReader? second, in WindowSet.Reading reading, int day, TEdges edges)
        where TEdges : struct, IEdges
    {
        var (low, otherLow) = strict
            ? (reading.First.Bounds.StrictLow, reading.Second.Bounds.StrictLow)
            : (reading.First.Bounds.Low, reading.Second.Bounds.Low);
        var firsts = Lows(first, second, low, otherLow, day, edges);
        if (second is null)
        {
            return firsts.ConvertAll(one => (one, otherLow));
        }

        // Of two first days the later one counts, so it is enough to hold each against the earliest of the other window.
        var pairs = new List<(int First, int Second)>();
        foreach (var one in firsts)
        {
            if (one >= otherLow)
            {
                pairs.Add((one, otherLow));
            }
        }

        foreach (var other in Lows(second, first, otherLow, low, day, edges))
        {
            if (other >= low)
            {
                pairs.Add((low, other));
            }
        }

        AddSameDays(first, second, firsts, day, pairs);
        return pairs;
    }

    /// <summary>Both anchors on one day: then neither's own kinds count on it.</summary>
    private void AddSameDays(WindowReader first, WindowReader second, List<int> firsts, int day, List<(int First, int Second)> pairs)
    {
        if (!first.SkipsAnchorDay || !second.SkipsAnchorDay)
        {
            return;
        }

        var until = int.MaxValue;
        var reading = second.Anchor!.Read(animal, day, ref until, null);
        foreach (var one in firsts)
        {
            if (reading.State == AnchorState.Recorded && second.Anchor.MayHaveBeen(animal, reading, one, strict))
            {
                pairs.Add((one, one));
            }
        }
    }

    private List<int> Lows<TEdges>(WindowReader window, WindowReader? other, int low, int otherLow, int day, TEdges edges)
        where TEdges : struct, IEdges
    {
        if (window.InDoubt(animal, day, strict) is not var (from, latest))
        {
            return [low];
        }

        var lows = new List<int> { low };
        for (var at = from; at <= latest;)
        {
            days.Steps?.Take();
            var first = window.LowFrom(at);
            if (window.MayHaveBeen(animal, at, strict))
            {
                lows.Add(first);
            }

            // A window may begin on the day after its first one, for the anchor's own kinds: so the day before an edge is one too.
            var turn = Turn(Math.Min(edges.Next(first), Next(first, [otherLow, otherLow + 1, day, day + 1, days.KnownDay + 1])), first);
            var reaching = window.AnchorReaching(turn);
            var next = Math.Min(reaching > at ? reaching : int.MaxValue, window.NextTurn(animal, at));
            at = other is { SkipsAnchorDay: true, Anchor: { } anchor } ? Math.Min(next, SameDay(anchor, at, day)) : next;
        }

        return lows;
    }

    private int SameDay(Anchor anchor, int at, int day)
    {
        var until = int.MaxValue;
        var reading = anchor.Read(animal, day, ref until, null);
        return Math.Min(anchor.NextTurn(animal, at), Next(at, [reading.Last, reading.Last + 1, reading.Latest + 1, reading.StrictLatest + 1]));
    }

    private static int Turn(int edge, int after) => edge != int.MaxValue && edge - 1 > after ? edge - 1 : edge;

    private static int Next(int after, ReadOnlySpan<int> turns)
    {
        var next = int.MaxValue;
        foreach (var turn in turns)
        {
            next = turn > after ? Math.Min(next, turn) : next;
        }

        return next;
    }
}
