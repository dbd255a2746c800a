namespace Byrelaw.Language.Rulebooks.Conditions;

/// <summary>A condition that could not be read: it breaks whatever it stands in.</summary>
public sealed record BrokenCondition : Condition
{
    /// <inheritdoc />
    public override string Subject => "";

    /// <inheritdoc />
    public override Demand? Demand => null;

    /// <inheritdoc />
    protected override Condition? Make(OtherParts others) => this;
}
