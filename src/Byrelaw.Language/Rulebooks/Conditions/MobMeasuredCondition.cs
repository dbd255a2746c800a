namespace Byrelaw.Language.Rulebooks.Conditions;

/// <summary>A value over her mob: <c>average liver copper of her mob in the last 90 days, from at least 5 animals, at least 95 umol/kg</c>.</summary>
/// <param name="Aggregate">Average, lowest or highest.</param>
/// <param name="Measure">Of what.</param>
/// <param name="Windows">None, one or two.</param>
/// <param name="FromAtLeast">With fewer animals sampled the answer is not known.</param>
/// <param name="Test">The demand.</param>
public sealed record MobMeasuredCondition(Aggregate Aggregate, MeasureKind Measure, ImmutableArray<Window> Windows, int FromAtLeast, NumberTest Test) : Condition(Windows)
{
    /// <inheritdoc />
    public override string Subject => $"{Aggregate.Words()} {Measure.Name} of her mob";

    /// <inheritdoc />
    public override Demand? Demand => Test;

    /// <inheritdoc />
    public override bool LooksAtOthers => true;

    /// <inheritdoc />
    protected override Condition? Make(OtherParts others) =>
        others.Measure(Measure) is { } measure && others.Value(Test, Measure, measure) is { } test
            ? this with { Measure = measure, Test = test, FromAtLeast = others.Sampled(FromAtLeast) }
            : null;
}
