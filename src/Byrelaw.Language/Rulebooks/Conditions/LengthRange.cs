namespace Byrelaw.Language.Rulebooks.Conditions;

/// <summary>Between what a length of time may lie: neither of two may pass the other; written in two units, each keeps what it may be in whichever month.</summary>
internal static class LengthRange
{
    /// <summary>A length by itself.</summary>
    public static ConditionNumber One(NumberPart part, TimeLength length) => new(part, false, length.Count, NumberSort.Time) { TimeUnit = length.Unit, Lowest = 0 };

    /// <summary>A near and a far one.</summary>
    public static (ConditionNumber Low, ConditionNumber High) Two(NumberPart part, TimeLength low, TimeLength high) =>
        (One(part, low) with { Highest = Most(low, high) }, One(part, high) with { IsHigh = true, Lowest = Least(low, high) });

    private static int Most(TimeLength low, TimeLength high)
    {
        var most = low.Unit == high.Unit ? high.Count : (int)(high.Count * FewestDays(high.Unit) / MostDays(low.Unit));
        return Math.Max(most, low.Count);
    }

    private static int Least(TimeLength low, TimeLength high)
    {
        var least = low.Unit == high.Unit ? low.Count : (int)Math.Ceiling(low.Count * MostDays(low.Unit) / FewestDays(high.Unit));
        return Math.Min(least, high.Count);
    }

    private static double FewestDays(TimeUnit unit) => unit switch { TimeUnit.Days => 1, TimeUnit.Weeks => 7, TimeUnit.Months => 28, _ => 365 };

    private static double MostDays(TimeUnit unit) => unit switch { TimeUnit.Days => 1, TimeUnit.Weeks => 7, TimeUnit.Months => 31, _ => 366 };
}
