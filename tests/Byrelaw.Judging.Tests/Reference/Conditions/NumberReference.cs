namespace Byrelaw.Judging.Tests.Reference;

/// <summary>A number against its limits, which may be a share of one of her facts: "at least 60% of mature weight".</summary>
public static class NumberReference
{
    public static Truth Compare(NumberTest test, ValueRange value, IReadOnlyList<FactCell> facts) =>
        Comparing.Number(test.Comparison, value, LimitOf(test.Low, facts), LimitOf(test.High, facts));

    /// <summary>A limit for one animal; any number where the fact that it is a share of is not known.</summary>
    public static ValueRange LimitOf(Limit limit, IReadOnlyList<FactCell> facts) =>
        limit.PercentOf is not { } fact ? ValueRange.Exactly((decimal)limit.Value)
        : facts[fact.Id].Number is { } whole ? ValueRange.Exactly((decimal)limit.Value * whole / 100)
        : ValueRange.Any;
}
