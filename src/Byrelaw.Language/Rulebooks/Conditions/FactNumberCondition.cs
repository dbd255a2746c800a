namespace Byrelaw.Language.Rulebooks.Conditions;

/// <summary>A fact that is a number or an amount: <c>breeding index at least 120</c>.</summary>
public sealed record FactNumberCondition(Fact Fact, NumberTest Test) : Condition
{
    /// <inheritdoc />
    public override string Subject => Fact.Name;

    /// <inheritdoc />
    public override Demand? Demand => Test;

    /// <inheritdoc />
    protected override Condition? Make(OtherParts others) =>
        others.Fact(Fact) is { } fact && others.Value(Test, Fact, fact) is { } test ? this with { Fact = fact, Test = test } : null;
}
