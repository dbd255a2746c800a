namespace Byrelaw.Language.Rulebooks.Conditions;

/// <summary>A fact that is one of some values: <c>breed is one of Friesian, Jersey</c>.</summary>
/// <param name="Fact">A <see cref="FactType.OneOf"/>, text or identity fact.</param>
/// <param name="Values">Declared spelling; compared folded.</param>
/// <param name="IsNot">True for <c>is not</c>, the Kleene opposite.</param>
public sealed record FactTextCondition(Fact Fact, ImmutableArray<string> Values, bool IsNot) : Condition
{
    /// <summary>Values that a file adds which the file of this condition does not see: of an animal that has one it is not known. None where it only asks whether she has one of its own.</summary>
    public ImmutableArray<string> Doubted { get; init; } = [];

    /// <summary>Whether a value is one of these.</summary>
    public bool Doubts(string value) => !Doubted.IsEmpty && Doubted.Any(doubted => NameFolding.Fold(doubted) == NameFolding.Fold(value));

    /// <inheritdoc />
    public override string Subject => $"{Fact.Name} is {(IsNot ? "not " : "")}{string.Join(" or ", Values)}";

    /// <inheritdoc />
    public override Demand? Demand => null;

    /// <inheritdoc />
    protected override Condition? Make(OtherParts others) => others.Fact(Fact) is { } fact ? this with { Fact = fact } : null;
}
