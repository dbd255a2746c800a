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
            if (maybe.Count(day => day >= first && day <= last) < FewestDays)
            {
                return null;
            }
        }

        return seen > 0 ? (from, reach) : null;
    }

    private static int YearsBefore(int day, int years) => Day.Number(Day.Date(day).PlusYears(-years));
}
