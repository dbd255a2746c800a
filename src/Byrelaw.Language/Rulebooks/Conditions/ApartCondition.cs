namespace Byrelaw.Language.Rulebooks.Conditions;

/// <summary>
/// <c>at least 2 heats between 18 and 24 days apart since last calving</c>: a chain of so many days with one, each so long after the one before it in
/// the chain. Others between do not matter.
/// </summary>
/// <param name="Days">How many days the chain has.</param>
/// <param name="Counted">What happens on them; any of these.</param>
/// <param name="Apart">How long one is after the one before: at least, at most or between.</param>
/// <param name="Windows">One or two; both must hold.</param>
public sealed record ApartCondition(int Days, ImmutableArray<Counted> Counted, TimeTest Apart, ImmutableArray<Window> Windows) : Condition(Windows)
{
    /// <summary>The fewest days that a chain has.</summary>
    public const int Fewest = 2;

    /// <summary>The most.</summary>
    public const int Most = 9;

    /// <inheritdoc />
    public override string Subject => string.Join(" or ", Counted.Select(counted => counted.Subject));

    /// <inheritdoc />
    public override Demand? Demand => null;

    /// <summary>The shortest that one may be after the one before; null for at most.</summary>
    public TimeLength? Shortest => Apart.Comparison == Comparison.AtMost ? null : Apart.Low;

    /// <summary>The longest; null for at least.</summary>
    public TimeLength? Longest => Apart.Comparison == Comparison.AtLeast ? null : Apart.High;

    /// <inheritdoc />
    protected override Condition? Make(OtherParts others)
    {
        ArgumentNullException.ThrowIfNull(others);
        var days = (int)others.Number(new ConditionNumber(NumberPart.Limit, false, Days, NumberSort.Count) { Comparison = Comparison.AtLeast, Lowest = Fewest, Highest = Most });
        var apart = others.Time(Apart, NumberPart.Apart);
        return OtherParts.All(Counted, (one, _) => one.With(others)) is { } counted ? this with { Days = days, Apart = apart, Counted = counted } : null;
    }
}
