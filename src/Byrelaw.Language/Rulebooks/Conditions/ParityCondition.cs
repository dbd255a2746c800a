namespace Byrelaw.Language.Rulebooks.Conditions;

/// <summary><c>parity at most 6</c>.</summary>
public sealed record ParityCondition(CountTest Test) : Condition
{
    /// <inheritdoc />
    public override string Subject => "parity";

    /// <inheritdoc />
    public override Demand? Demand => Test;

    /// <inheritdoc />
    protected override Condition? Make(OtherParts others) => this with { Test = others.Count(Test) };
}
