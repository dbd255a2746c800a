namespace Byrelaw.Language.Rulebooks.Conditions;

/// <summary>A fact that is one of some values: <c>breed is one of Friesian, Jersey</c>.</summary>
/// <param name="Fact">A <see cref="FactType.OneOf"/>, text or identity fact.</param>
/// <param name="Values">Declared spelling; compared folded.</param>
/// <param name="IsNot">True for <c>is not</c>, the Kleene opposite.</param>
public sealed record FactTextCondition(Fact Fact, ImmutableArray<string> Values, bool IsNot) : Condition
{
    /// <inheritdoc />
    public override string Subject => $"{Fact.Name} is {(IsNot ? "not " : "")}{string.Join(" or ", Values)}";

    /// <inheritdoc />
    public override Demand? Demand => null;

    /// <inheritdoc />
    protected override Condition? Make(OtherParts others) => others.Fact(Fact) is { } fact ? this with { Fact = fact } : null;
}
