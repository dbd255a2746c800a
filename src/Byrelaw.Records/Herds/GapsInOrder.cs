namespace Byrelaw.Records.Herds;

/// <summary>Gaps by kind, animal and first day, so that those of some days are found by halves.</summary>
internal sealed class GapsInOrder
{
    // By gap: the last day of it, and of those before it of the same kind and animal.
    private readonly int[] _latest;

    /// <summary>Takes them in that order.</summary>
    public GapsInOrder(Gap[] gaps)
    {
        All = gaps;
        _latest = new int[gaps.Length];
        for (var place = 0; place < gaps.Length; place++)
        {
            var isSame = place > 0 && gaps[place - 1].Kind == gaps[place].Kind && gaps[place - 1].Animal == gaps[place].Animal;
            _latest[place] = isSame ? Math.Max(_latest[place - 1], gaps[place].To) : gaps[place].To;
        }
    }

    /// <summary>All of them.</summary>
    public Gap[] All { get; }

    /// <summary>Whether one of just this kind and animal can be dated in these days: of those that begin by the last day, one reaches to the first.</summary>
    public bool Any(int kind, int animal, int from, int to)
    {
        var last = Place(kind, animal, Math.Min(to, Day.End) + 1) - 1;
        return IsOf(last, kind, animal) && _latest[last] >= from;
    }

    /// <summary>The first day after a day on which one begins or is over; int.MaxValue for none.</summary>
    public int NextEdge(int kind, int animal, int day)
    {
        var first = Place(kind, animal, Day.Start);
        if (!IsOf(first, kind, animal))
        {
            return int.MaxValue;
        }

        // One of any day leaves every day in doubt.
        if (All[first].To == Day.End && All[first].From <= Day.Start)
        {
            return Day.End + 1;
        }

        var next = Place(kind, animal, Math.Max(day, Day.Start) + 1);
        var edge = IsOf(next, kind, animal) ? All[next].From : int.MaxValue;
        for (var place = next - 1; place >= first && _latest[place] >= day; place--)
        {
            edge = All[place].To >= day ? Math.Min(edge, All[place].To + 1) : edge;
        }

        return edge;
    }

    private bool IsOf(int place, int kind, int animal) => place >= 0 && place < All.Length && All[place].Kind == kind && All[place].Animal == animal;

    /// <summary>The place of the first gap that is not before this one.</summary>
    private int Place(int kind, int animal, int day)
    {
        var (low, high) = (0, All.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            ref readonly var gap = ref All[middle];
            var isBefore = gap.Kind != kind ? gap.Kind < kind : gap.Animal != animal ? gap.Animal < animal : gap.From < day;
            (low, high) = isBefore ? (middle + 1, high) : (low, middle);
        }

        return low;
    }
}
