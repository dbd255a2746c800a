namespace Byrelaw.Language.Rulebooks.Conditions;

/// <summary>How a found value is compared with a limit.</summary>
public enum Comparison
{
    /// <summary>The limit or above.</summary>
    AtLeast,

    /// <summary>The limit or below.</summary>
    AtMost,

    /// <summary>Above the limit.</summary>
    MoreThan,

    /// <summary>Below the limit.</summary>
    LessThan,

    /// <summary>The limit itself. <c>no X</c> is exactly 0.</summary>
    Exactly,

    /// <summary>From the low limit to the high one, both included.</summary>
    Between,
}

/// <summary>What a thing found is held to.</summary>
/// <param name="Comparison">How.</param>
public abstract record Demand(Comparison Comparison);

/// <summary>A demand on a count.</summary>
/// <param name="Comparison">How.</param>
/// <param name="Low">The limit; the lower of two.</param>
/// <param name="High">The higher limit of <see cref="Comparison.Between"/>; else equal to <paramref name="Low"/>.</param>
public sealed record CountTest(Comparison Comparison, int Low, int High) : Demand(Comparison)
{
    /// <summary>Whether it is <c>no X</c>, which holds no number that anybody wrote.</summary>
    public bool IsNone => Comparison == Comparison.Exactly && Low == 0;
}

/// <summary>A demand on the time between an event and the day of judging.</summary>
public sealed record TimeTest(Comparison Comparison, TimeLength Low, TimeLength High) : Demand(Comparison);

/// <summary>A demand on a number.</summary>
public sealed record NumberTest(Comparison Comparison, Limit Low, Limit High) : Demand(Comparison);

/// <summary>
/// A limit: a number in the unit of what is compared, or a share of one of her facts.
/// </summary>
/// <param name="Value">The number, in the measure's declared unit; with <paramref name="PercentOf"/>, per cent.</param>
/// <param name="PercentOf">The fact of which <paramref name="Value"/> per cent is the limit; null for a plain number.</param>
public sealed record Limit(double Value, Fact? PercentOf = null);
