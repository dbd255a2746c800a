namespace Byrelaw.Judging.Criteria;

/// <summary>The numbers that a demand accepts: a stretch with both ends included.</summary>
internal readonly record struct Limits(double Low, double High)
{
    /// <summary>Averages, changes and shares are rounded to this many decimals before they are compared,
    /// so that 4.6 - 5.7 is -1.1 and not a hair less.</summary>
    public const int Decimals = 9;

    /// <summary>The lowest number that may be accepted; lower than <see cref="Low"/> where that limit is not known.</summary>
    public double LowAtLeast { get; init; } = Low;

    /// <summary>The highest number that may be accepted.</summary>
    public double HighAtMost { get; init; } = High;

    /// <summary>Whether both are known.</summary>
    public bool IsKnown => LowAtLeast == Low && HighAtMost == High;

    /// <summary>The limits that a comparison sets. More and less than a number start at the next one a double can hold.</summary>
    public static Limits Of(Comparison comparison, double low, double high) => comparison switch
    {
        Comparison.AtLeast => new(low, double.PositiveInfinity),
        Comparison.AtMost => new(double.NegativeInfinity, low),
        Comparison.MoreThan => new(Math.BitIncrement(low), double.PositiveInfinity),
        Comparison.LessThan => new(double.NegativeInfinity, Math.BitDecrement(low)),
        Comparison.Exactly => new(low, low),
        _ => new(low, high),
    };

    /// <summary>The limits of a count.</summary>
    public static Limits Of(CountTest test) => test.Comparison switch
    {
        Comparison.MoreThan => new(test.Low + 1.0, double.PositiveInfinity),
        Comparison.LessThan => new(double.NegativeInfinity, test.Low - 1.0),
        _ => Of(test.Comparison, test.Low, test.High),
    };

    /// <summary>Rounds as results are rounded before they are compared.</summary>
    public static double Round(double value) => double.IsFinite(value) ? Math.Round(value, Decimals) : value;

    /// <summary>What can be said of a value that lies somewhere from <paramref name="low"/> to <paramref name="high"/>.</summary>
    public Truth Accept(double low, double high)
    {
        if (low >= Low && high <= High)
        {
            return Truth.True;
        }

        return high < LowAtLeast || low > HighAtMost ? Truth.False : Truth.Unknown;
    }

    /// <summary>How far inside the nearest limit a value lies; negative outside.</summary>
    public double Margin(double value) => Math.Round(Math.Min(value - Low, High - value), Decimals);

    /// <summary>Whether accepting only grows (or only shrinks) as the value grows: then the two ends of a range decide for all of it.</summary>
    public bool IsOneSided(double lowestPossible) => double.IsInfinity(High) || Low <= lowestPossible;
}
