namespace Byrelaw.Judging.Promises;

/// <summary>Lengths of time on numbered days, always added to the earlier day.</summary>
internal static class TimeSpans
{
    /// <summary>The day so long after another.</summary>
    public static int After(this TimeLength length, int day) =>
        length.Unit == TimeUnit.Days ? day + length.Count : Day.Number(length.After(Day.Date(day)));

    /// <summary>The first day from which it is at least so long to a day.</summary>
    public static int FirstBefore(this TimeLength length, int day)
    {
        var first = length.LastBefore(day);
        while (length.After(first - 1) >= day)
        {
            first--;
        }

        return first;
    }

    /// <summary>The last day from which it is at most so long to a day.</summary>
    public static int LastBefore(this TimeLength length, int day)
    {
        // No month is longer than 31 days, and no year than 366.
        var last = day - (length.Count * length.Unit switch { TimeUnit.Days => 1, TimeUnit.Weeks => 7, TimeUnit.Months => 31, _ => 366 });
        while (length.After(last + 1) <= day)
        {
            last++;
        }

        return last;
    }
}
