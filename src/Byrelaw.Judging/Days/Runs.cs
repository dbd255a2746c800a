namespace Byrelaw.Judging.Days;

/// <summary>Searches in one animal's run of one kind. Runs are short, and the days asked for are
/// mostly near their ends, so walking back beats halving.</summary>
internal static class Runs
{
    private const int Long = 24;

    /// <summary>The place of the last entry on or before a day; one less than the run's start where there is none.</summary>
    public static int LastAtMost(KindRun run, int animal, int day)
    {
        var start = run.Starts[animal];
        var end = run.Starts[animal + 1] - 1;
        var days = run.Days;
        if (end - start > Long)
        {
            return LastAtMost(days, start, end, day);
        }

        while (end >= start && days[end] > day)
        {
            end--;
        }

        return end;
    }

    /// <summary>The same in a sorted stretch of days, by halving.</summary>
    public static int LastAtMost(int[] days, int start, int end, int day)
    {
        while (start <= end)
        {
            var middle = (start + end) >>> 1;
            if (days[middle] <= day)
            {
                start = middle + 1;
            }
            else
            {
                end = middle - 1;
            }
        }

        return end;
    }
}
