namespace Byrelaw.Judging.Promises;

/// <summary>
/// Whether a kind is no longer written down: after its last entry it is silent for more than a fortnight, on days that each of
/// the last years filled with entries.
/// </summary>
internal static class SilenceTrial
{
    private const int LongestPlain = 14;
    private const int FewestDays = 3;
    private const int Years = 3;

    /// <summary>The silent days; null where nothing is strange.</summary>
    public static (int From, int To)? Find(Herd herd, int kind)
    {
        var (since, reach) = (herd.Coverage.Since[kind], herd.Coverage.Reach[kind]);
        int[] days = [.. herd.Runs[kind].Days.Distinct().Order()];
        if (since == Day.End || days.Length == 0)
        {
            return null;
        }

        // A row that cannot be read may have been one in a year before; it breaks no silence now. One of any day may have been of each year.
        Gap[] unread = [.. herd.Coverage.Gaps.Where(gap => (gap.Kind == kind || gap.Kind < 0) && gap.From <= reach)];
        var ofAnyDay = unread.Where(gap => gap.From <= Day.Start).DistinctBy(gap => (gap.Line, gap.Animal)).Count();
        int[] maybe = [.. days.Concat(unread.Where(gap => gap.From > Day.Start).Select(gap => gap.From)).Distinct().Order()];
        var earliest = ofAnyDay > 0 ? since : maybe[0];

        // Silent since the last entry; or only since a later row that may be one.
        foreach (var last in maybe.Where(day => day >= days[^1]))
        {
            var from = Math.Max(last + 1, since);
            if (reach - from + 1 > LongestPlain && IsStrange(days[0], earliest, maybe, ofAnyDay, from, reach))
            {
                return (from, reach);
            }
        }

        return null;
    }

    /// <summary>Whether the same days of the years before held entries. Of those years count those that begin after the first entry.</summary>
    private static bool IsStrange(int firstEntry, int earliest, int[] maybe, int ofAnyDay, int from, int reach)
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
            int[] then = [.. maybe.Where(day => day >= first && day <= last)];
            if (then.Length + ofAnyDay < FewestDays || LongestPause(then, ofAnyDay, first, last) * 2 >= reach - from + 1)
            {
                return false;
            }
        }

        return seen > 0;
    }

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
