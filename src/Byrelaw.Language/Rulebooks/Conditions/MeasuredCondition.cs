namespace Byrelaw.Language.Rulebooks.Conditions;

/// <summary>A measured value: <c>latest body condition in the last 45 days between 4.0 and 5.5</c>.</summary>
/// <param name="Aggregate">Which value.</param>
/// <param name="Measure">Of what.</param>
/// <param name="Windows">None, one or two.</param>
/// <param name="Test">The demand, in the measure's declared unit.</param>
public sealed record MeasuredCondition(Aggregate Aggregate, MeasureKind Measure, ImmutableArray<Window> Windows, NumberTest Test) : Condition(Windows)
{
    /// <inheritdoc />
    public override string Subject => $"{Aggregate.Words()} {Measure.Name}";

    /// <inheritdoc />
    public override Demand? Demand => Test;

    /// <inheritdoc />
    protected override Condition? Make(OtherParts others) =>
        others.Measure(Measure) is { } measure && others.Value(Test, Measure, measure, Aggregate == Aggregate.Change) is { } test
            ? this with { Measure = measure, Test = test }
            : null;
}
