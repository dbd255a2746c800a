namespace Byrelaw.Language.Reasoning.Claims;

/// <summary>The numbers that a demand accepts, both ends included.</summary>
internal readonly record struct NumberStretch(double Low, double High)
{
    /// <summary>The stretch of a demand on a number. More and less than a number start at the next one a double can hold.</summary>
    public static NumberStretch Of(NumberTest test) => Of(test.Comparison, test.Low.Value, test.High.Value, Math.BitIncrement, Math.BitDecrement);

    /// <summary>The stretch of a demand on a count.</summary>
    public static NumberStretch Of(CountTest test) => Of(test.Comparison, test.Low, test.High, low => low + 1, high => high - 1);

    private static NumberStretch Of(Comparison comparison, double low, double high, Func<double, double> above, Func<double, double> below) => comparison switch
    {
        Comparison.AtLeast => new(low, double.PositiveInfinity),
        Comparison.AtMost => new(double.NegativeInfinity, low),
        Comparison.MoreThan => new(above(low), double.PositiveInfinity),
        Comparison.LessThan => new(double.NegativeInfinity, below(low)),
        Comparison.Exactly => new(low, low),
        _ => new(low, high),
    };

    /// <summary>A quantity lies in the stretch.</summary>
    public Claim Holds(int quantity, Condition from)
    {
        var bounds = new List<Bound>();
        if (!double.IsInfinity(Low))
        {
            bounds.Add(Bound.Above(quantity, Low, from));
        }

        if (!double.IsInfinity(High))
        {
            bounds.Add(Bound.Below(quantity, High, from));
        }

        return Claim.Of([.. bounds]);
    }

    /// <summary>A quantity that may be any number lies outside it.</summary>
    public Claim Fails(int quantity, Condition from)
    {
        var below = double.IsInfinity(Low) ? Claim.Never : Claim.Of(Bound.Below(quantity, Math.BitDecrement(Low), from));
        return double.IsInfinity(High) ? below : below.Or(Claim.Of(Bound.Above(quantity, Math.BitIncrement(High), from)));
    }
}
