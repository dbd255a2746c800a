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
    public static (int From, int To)? Of(Herd herd, int kind)
    {
        var (since, reach) = (herd.Coverage.Since[kind], herd.Coverage.Reach[kind]);
        int[] days = [.. herd.Runs[kind].Days.Distinct().Order()];
        if (since == Day.End || days.Length == 0)
        {
            return null;
        }

        var from = Math.Max(days[^1] + 1, since);
        if (reach - from + 1 <= LongestPlain)
        {
            return null;
        }

        // A row that cannot be read may have been one in a year before; it breaks no silence now.
        int[] maybe = [.. days.Concat(herd.Coverage.Gaps.Where(gap => (gap.Kind == kind || gap.Kind < 0) && gap.From > Day.Start).Select(gap => gap.From)).Distinct().Order()];
        var seen = 0;
        for (var years = 1; years <= Years; years++)
        {
            var (first, last) = (YearsBefore(from, years), YearsBefore(reach, years));
            if (first <= days[0])
            {
                break;
            }

            seen++;
            int[] then = [.. maybe.Where(day => day >= first && day <= last)];
            if (then.Length < FewestDays || LongestPause(then, first, last) * 2 >= reach - from + 1)
            {
                return null;
            }
        }

        return seen > 0 ? (from, reach) : null;
    }

    /// <summary>In a small herd whole months are silent anyway: a silence is strange only where none of half its length was seen on those days.</summary>
    private static int LongestPause(int[] days, int first, int last)
    {
        var (longest, before) = (0, first - 1);
        foreach (var day in days.Append(last + 1))
        {
            longest = Math.Max(longest, day - before - 1);
            before = day;
        }

        return longest;
    }

    private static int YearsBefore(int day, int years) => Day.Number(Day.Date(day).PlusYears(-years));
}
