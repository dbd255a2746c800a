namespace Byrelaw.Language.Rulebooks;

/// <summary>The units a duration may be written in.</summary>
public enum TimeUnit
{
    /// <summary>Calendar days.</summary>
    Days,

    /// <summary>Seven days each.</summary>
    Weeks,

    /// <summary>Calendar months, clamped to the month's end.</summary>
    Months,

    /// <summary>Calendar years, 29 February clamped to the 28th.</summary>
    Years,
}

/// <summary>A whole number of days, weeks, months or years, kept as written.</summary>
/// <param name="Count">How many, 0 or more.</param>
/// <param name="Unit">Of what.</param>
public readonly record struct TimeLength(int Count, TimeUnit Unit)
{
    /// <summary>The last day that dates may reach; sums past it stop there.</summary>
    public static readonly LocalDate Latest = new(9998, 12, 31);

    /// <summary>
    /// The day this long after <paramref name="date"/>. Always added to the earlier date, never
    /// taken from the later one: 31 January and one month is 28 (or 29) February.
    /// </summary>
    public LocalDate After(LocalDate date)
    {
        var roomInYears = Latest.Year - date.Year;
        return Unit switch
        {
            TimeUnit.Days when Count / 365 < roomInYears => date.PlusDays(Count),
            TimeUnit.Weeks when Count / 52 < roomInYears => date.PlusWeeks(Count),
            TimeUnit.Months when Count / 12 < roomInYears => date.PlusMonths(Count),
            TimeUnit.Years when Count < roomInYears => date.PlusYears(Count),
            _ => Latest,
        };
    }

    /// <summary>The duration as rule files write it, such as <c>56 days</c> or <c>1 month</c>.</summary>
    public override string ToString()
    {
        var unit = Unit switch
        {
            TimeUnit.Days => "day",
            TimeUnit.Weeks => "week",
            TimeUnit.Months => "month",
            _ => "year",
        };
        return Count == 1 ? $"1 {unit}" : $"{Count} {unit}s";
    }
}
