namespace Byrelaw.Language.Rulebooks.Conditions;

/// <summary>Which number of a condition.</summary>
public enum NumberPart
{
    /// <summary>The limit that a count, a time, an age, a value or a standing is held to.</summary>
    Limit,

    /// <summary>How many of her mob: <c>at most 1 of her mob</c>.</summary>
    OfTheMob,

    /// <summary>From how many animals sampled: <c>from at least 5 animals</c>.</summary>
    Sampled,

    /// <summary>The length of the first window.</summary>
    FirstWindow,

    /// <summary>The length of the second window.</summary>
    SecondWindow,

    /// <summary>How long one is after another: <c>between 18 and 24 days apart</c>.</summary>
    Apart,

    /// <summary>How many bullets of a list: <c>at least 2 of</c>.</summary>
    OfTheList,
}

/// <summary>What sort of number it is.</summary>
public enum NumberSort
{
    /// <summary>A whole number of days, weeks, months or years.</summary>
    Time,

    /// <summary>A whole number of events, animals, calvings or bullets.</summary>
    Count,

    /// <summary>A measured value or a fact, in its unit or on its scale.</summary>
    Amount,

    /// <summary>Per cent.</summary>
    Share,
}

/// <summary>One number of one condition.</summary>
/// <param name="Part">Which.</param>
/// <param name="IsHigh">The higher of two: of a <c>between</c>, or of a window <c>between N and M days ago</c>.</param>
/// <param name="Value">The number, in its unit.</param>
/// <param name="Sort">What sort of number.</param>
public sealed record ConditionNumber(NumberPart Part, bool IsHigh, double Value, NumberSort Sort)
{
    /// <summary>How a limit is compared; null for the other parts.</summary>
    public Comparison? Comparison { get; init; }

    /// <summary>For <see cref="NumberSort.Time"/>: of what.</summary>
    public TimeUnit TimeUnit { get; init; }

    /// <summary>For an amount with one: its unit.</summary>
    public Unit? Unit { get; init; }

    /// <summary>The lowest value that makes sense here; null for none.</summary>
    public double? Lowest { get; init; }

    /// <summary>The highest value that makes sense here (the end of a scale, the other limit of a <c>between</c>); null for none.</summary>
    public double? Highest { get; init; }

    /// <summary>Whether only whole numbers make sense.</summary>
    public bool IsWhole => Sort is NumberSort.Time or NumberSort.Count;
}
