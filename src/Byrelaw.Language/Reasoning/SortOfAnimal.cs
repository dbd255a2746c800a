namespace Byrelaw.Language.Reasoning;

/// <summary>That an animal is a cow, a heifer, or what else a rule applies to or a list takes.</summary>
/// <param name="Sort">Which.</param>
/// <param name="Words">How the file says so, such as <c>applies to cows</c>.</param>
internal sealed record SortOfAnimal(Audience Sort, string Words) : Condition
{
    /// <inheritdoc />
    public override string Subject => Words;

    /// <inheritdoc />
    public override Demand? Demand => null;

    /// <inheritdoc />
    protected override Condition? Make(OtherParts others) => this;
}
