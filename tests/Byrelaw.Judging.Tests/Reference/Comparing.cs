namespace Byrelaw.Judging.Tests.Reference;

/// <summary>"Comparisons: at least, at most, more than, less than, exactly, between A and B (both ends included)."</summary>
public static class Comparing
{
    /// <summary>A value that may be anything in a range, against limits that may be too.</summary>
    public static Truth Number(Comparison comparison, ValueRange value, ValueRange low, ValueRange high) => comparison switch
    {
        Comparison.AtLeast => NotBelow(value, low),
        Comparison.AtMost => NotBelow(low, value),
        Comparison.MoreThan => Kleene.Not(NotBelow(low, value)),
        Comparison.LessThan => Kleene.Not(NotBelow(value, low)),
        Comparison.Exactly => Kleene.And(NotBelow(value, low), NotBelow(low, value)),
        Comparison.Between => Kleene.And(NotBelow(value, low), NotBelow(high, value)),
        _ => throw new ArgumentOutOfRangeException(nameof(comparison)),
    };

    /// <summary>A count that is <paramref name="atLeast"/> or more, up to <paramref name="atMost"/> (null: no end).</summary>
    public static Truth Count(CountTest test, int atLeast, int? atMost) =>
        Number(test.Comparison, new ValueRange(atLeast, atMost), ValueRange.Exactly(test.Low), ValueRange.Exactly(test.High));

    /// <summary>
    /// "Months and years are always added to the earlier date, clamped to the month's end: at least N months since e is
    /// true from e + N; at most until e + N, inclusive; less than before it; more than after it."
    /// </summary>
    public static bool Elapsed(TimeTest test, int since, int day)
    {
        var low = Sums.After(test.Low, since);
        return test.Comparison switch
        {
            Comparison.AtLeast => day >= low,
            Comparison.AtMost => day <= low,
            Comparison.LessThan => day < low,
            Comparison.MoreThan => day > low,
            Comparison.Exactly => day == low,
            Comparison.Between => day >= low && day <= Sums.After(test.High, since),
            _ => throw new ArgumentOutOfRangeException(nameof(test)),
        };
    }

    /// <summary>Whether the first is surely, surely not or perhaps at least the second.</summary>
    private static Truth NotBelow(ValueRange a, ValueRange b) =>
        a.Low is { } al && b.High is { } bh && al >= bh ? Truth.True
        : a.High is { } ah && b.Low is { } bl && ah < bl ? Truth.False
        : Truth.Unknown;
}
