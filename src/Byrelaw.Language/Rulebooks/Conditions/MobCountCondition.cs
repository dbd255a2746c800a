namespace Byrelaw.Language.Rulebooks.Conditions;

/// <summary>How many of her mob have such a value: <c>at most 1 of her mob with serum copper in the last 60 days less than 7 umol/L, from at least 10 animals</c>.</summary>
public sealed record MobCountCondition(CountTest Count, MeasureKind Measure, ImmutableArray<Window> Windows, NumberTest Test, int FromAtLeast) : Condition(Windows)
{
    /// <inheritdoc />
    public override string Subject => $"of her mob with such {Measure.Name}";

    /// <inheritdoc />
    public override Demand? Demand => Count;

    /// <inheritdoc />
    public override bool LooksAtOthers => true;

    /// <inheritdoc />
    protected override Condition? Make(OtherParts others)
    {
        var count = others.Count(Count, NumberPart.OfTheMob);
        return others.Measure(Measure) is { } measure && others.Value(Test, Measure, measure) is { } test
            ? this with { Count = count, Measure = measure, Test = test, FromAtLeast = others.Sampled(FromAtLeast) }
            : null;
    }
}
