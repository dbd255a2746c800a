namespace Byrelaw.Language.Rulebooks.Conditions;

/// <summary><c>official identity is recorded</c>.</summary>
public sealed record RecordedCondition(Fact Fact, bool IsNot) : Condition
{
    /// <inheritdoc />
    public override string Subject => $"{Fact.Name} is {(IsNot ? "not " : "")}recorded";

    /// <inheritdoc />
    public override Demand? Demand => null;

    /// <inheritdoc />
    protected override Condition? Make(OtherParts others) => others.Fact(Fact) is { } fact ? this with { Fact = fact } : null;
}
