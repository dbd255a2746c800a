namespace Byrelaw.Language.Rulebooks.Conditions;

/// <summary>A defined name: <c>cycling</c>, <c>not cycling</c>.</summary>
/// <param name="Define">The name of a <see cref="Define"/> of the rulebook, declared spelling.</param>
/// <param name="Index">Its place in <see cref="Rulebook.Defines"/>.</param>
/// <param name="Not">True for <c>not</c>.</param>
public sealed record NamedCondition(string Define, int Index, bool Not) : Condition
{
    /// <inheritdoc />
    public override string Subject => $"{(Not ? "not " : "")}{Define}";

    /// <inheritdoc />
    public override Demand? Demand => null;

    /// <inheritdoc />
    protected override Condition? Make(OtherParts others) => others.Define(this);
}
