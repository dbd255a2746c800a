namespace Byrelaw.Judging.Tests.Generators;

/// <summary>Durations, few enough for dates to fall on their borders.</summary>
public static class GenLengths
{
    private static readonly TimeLength[] All =
    [
        new(0, TimeUnit.Days), new(1, TimeUnit.Days), new(7, TimeUnit.Days), new(21, TimeUnit.Days), new(28, TimeUnit.Days), new(30, TimeUnit.Days),
        new(56, TimeUnit.Days), new(60, TimeUnit.Days), new(90, TimeUnit.Days), new(365, TimeUnit.Days), new(1, TimeUnit.Weeks), new(8, TimeUnit.Weeks),
        new(1, TimeUnit.Months), new(2, TimeUnit.Months), new(6, TimeUnit.Months), new(13, TimeUnit.Months), new(15, TimeUnit.Months), new(1, TimeUnit.Years),
        new(2, TimeUnit.Years),
    ];

    public static readonly Gen<TimeLength> Any = Gen.OneOf(All);

    /// <summary>The first not longer than the second.</summary>
    public static readonly Gen<(TimeLength Short, TimeLength Long)> Pair = Gen.Select(Any, Any, (a, b) => RoughDays(a) <= RoughDays(b) ? (a, b) : (b, a));

    /// <summary>For ages.</summary>
    public static readonly Gen<TimeLength> Age = Gen.OneOf(
        new TimeLength(13, TimeUnit.Months), new TimeLength(15, TimeUnit.Months), new TimeLength(1, TimeUnit.Years), new TimeLength(2, TimeUnit.Years), new TimeLength(60, TimeUnit.Weeks));

    public static int RoughDays(TimeLength length) => length.Unit switch
    {
        TimeUnit.Days => length.Count,
        TimeUnit.Weeks => 7 * length.Count,
        TimeUnit.Months => 30 * length.Count,
        _ => 365 * length.Count,
    };
}
