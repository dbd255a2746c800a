namespace Byrelaw.Judging.Promises;

/// <summary>
/// Whether a kind is no longer written down: for more than a fortnight up to the reach it is silent, but for a stray entry, on days that
/// each of the last years filled with entries.
/// </summary>
internal static class SilenceTrial
{
    private const int LongestPlain = 14;
    private const int FewestDays = 3;
    private const int Years = 3;

    // One entry typed late, or with a slip of the month, ends no silence: it may hold one day for every ten that the poorest of the years held.
    private const int OneInSoMany = 10;

    /// <summary>The longest silence, and how many days with an entry stand in it; null where nothing is strange.</summary>
    public static Silence? Find(Herd herd, int kind)
    {
        var (since, reach) = (herd.Coverage.Since[kind], herd.Coverage.Reach[kind]);
        int[] days = [.. herd.Runs[kind].Days.Distinct().Order()];
        if (since == Day.End || days.Length == 0)
        {
            return null;
        }

        // A row that cannot be read may have been one in a year before; it breaks no silence now. What only hints at one, such as a move to the dry cows, is none. One of any day may have been of each year.
        Gap[] unread = [.. herd.Coverage.Gaps.Where(gap => !gap.IsHint && (gap.Kind == kind || gap.Kind < 0) && gap.From <= reach)];
        var ofAnyDay = unread.Where(IsOfManyDays).DistinctBy(gap => (gap.Line, gap.Animal)).Count();
        int[] maybe = [.. days.Concat(unread.Where(gap => !IsOfManyDays(gap)).Select(gap => gap.From)).Distinct().Order()];
        var earliest = ofAnyDay > 0 ? since : maybe[0];

        // A silence begins after an entry, or after a row that may be one, and not before the promise.
        foreach (var from in maybe.Select(day => Math.Max(day + 1, since)).Distinct())
        {
            if (reach - from + 1 <= LongestPlain)
            {
                break;
            }

            var strays = Count(days, from, reach);
            if (IsStrange(days[0], earliest, maybe, ofAnyDay, strays, from, reach))
            {
                return new Silence(from, reach, strays);
            }
        }

        return null;
    }

    private static bool IsOfManyDays(Gap gap) => gap.To > gap.From;

    /// <summary>Whether the same days of the years before held entries. Of those years count those that begin after the first entry.</summary>
    private static bool IsStrange(int firstEntry, int earliest, int[] maybe, int ofAnyDay, int strays, int from, int reach)
    {
        var seen = 0;
        for (var years = 1; years <= Years; years++)
        {
            var (first, last) = (YearsBefore(from, years), YearsBefore(reach, years));
            if (first <= (seen > 0 ? firstEntry : earliest))
            {
                break;
            }

            seen++;
            var then = Count(maybe, first, last) + ofAnyDay;
            if (then < FewestDays || strays * OneInSoMany > then)
            {
                return false;
            }

            int[] on = [.. maybe.Where(day => day >= first && day <= last)];
            if (LongestPause(on, ofAnyDay, first, last) * 2 >= reach - from + 1)
            {
                return false;
            }
        }

        return seen > 0;
    }

    /// <summary>How many of some days, in order, lie between two, both included.</summary>
    private static int Count(int[] days, int from, int to) => Place(days, to + 1) - Place(days, from);

    private static int Place(int[] days, int day) => Array.BinarySearch(days, day) is var place && place < 0 ? ~place : place;

    /// <summary>In a small herd whole months are silent anyway: a silence is strange only where none of half its length was seen on those days.</summary>
    /// <param name="days">In order.</param>
    /// <param name="more">So many more days, each where it parts a long pause best.</param>
    /// <param name="first">The first day looked at.</param>
    /// <param name="last">The last.</param>
    private static int LongestPause(int[] days, int more, int first, int last)
    {
        var pauses = new List<int>();
        var before = first - 1;
        foreach (var day in days.Append(last + 1))
        {
            pauses.Add(day - before - 1);
            before = day;
        }

        var (low, high) = (0, pauses.Max());
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = pauses.Sum(pause => pause / (middle + 1)) <= more ? (low, middle) : (middle + 1, high);
        }

        return low;
    }

    private static int YearsBefore(int day, int years) => Day.Number(Day.Date(day).PlusYears(-years));
}

/// <summary>Days on which a kind is not written down any more.</summary>
/// <param name="From">The first.</param>
/// <param name="To">The last: the kind's reach.</param>
/// <param name="Strays">How many of them hold an entry all the same.</param>
internal readonly record struct Silence(int From, int To, int Strays);
