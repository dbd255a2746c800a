namespace Byrelaw.Judging.Tests.Reference;

/// <summary>Dates and durations added, each sum worked out once.</summary>
public static class Sums
{
    [ThreadStatic]
    private static Dictionary<(int, int, int), int>? _known;

    /// <summary>The day that is this long after another.</summary>
    public static int After(TimeLength length, int day) => length.Unit switch
    {
        TimeUnit.Days => day + length.Count,
        TimeUnit.Weeks => day + (7 * length.Count),
        _ => Calendar(length, day),
    };

    private static int Calendar(TimeLength length, int day)
    {
        var known = _known ??= [];
        var key = (length.Count, (int)length.Unit, day);
        if (!known.TryGetValue(key, out var after))
        {
            after = DayNumber.Of(length.After(DayNumber.Date(day)));
            known[key] = after;
        }

        return after;
    }
}
