namespace Byrelaw.Language.Rulebooks.Conditions;

/// <summary><c>age at least 13 months</c>.</summary>
public sealed record AgeCondition(TimeTest Test) : Condition
{
    /// <inheritdoc />
    public override string Subject => "age";

    /// <inheritdoc />
    public override Demand? Demand => Test;

    /// <inheritdoc />
    protected override Condition? Make(OtherParts others) => this with { Test = others.Time(Test) };
}
