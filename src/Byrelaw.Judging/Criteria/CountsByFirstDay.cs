namespace Byrelaw.Judging.Criteria;

/// <summary>How many entries of one kind an animal has from any first day of a window on, to its last: each day is counted once, however many first
/// days are asked for.</summary>
internal sealed class CountsByFirstDay
{
    /// <summary>From the last day back: the days with anything to count, and how many there are from each on.</summary>
    private readonly List<(int Day, int Least, int Most)> _from = [];

    /// <summary>Counts them.</summary>
    /// <param name="counter">What is counted.</param>
    /// <param name="animal">Whose.</param>
    /// <param name="widest">The window; its earliest first day is the earliest asked for.</param>
    public CountsByFirstDay(EntryCounter counter, int animal, in Bounds widest)
    {
        var tally = new EntryTally();
        foreach (var day in counter.DaysIn(animal, widest.StrictLow, widest.High))
        {
            counter.Count(animal, new Bounds(day, day, day, day), ref tally, null);
            _from.Add((day, tally.Least, tally.Most));
        }
    }

    /// <summary>How many there are from a day on, at least and at most.</summary>
    public (int Least, int Most) From(int first)
    {
        var (low, high) = (0, _from.Count);
        while (low < high)
        {
            var middle = (low + high) >>> 1;
            (low, high) = _from[middle].Day >= first ? (middle + 1, high) : (low, middle);
        }

        return low == 0 ? (0, 0) : (_from[low - 1].Least, _from[low - 1].Most);
    }
}
