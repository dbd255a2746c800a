namespace Byrelaw.Language.Rulebooks.Conditions;

/// <summary><c>in mob "Once-a-day"</c>, <c>in mob Hill or River</c>, <c>not in mob Hill</c>: by her latest move, or the column where she has none.</summary>
/// <param name="Mobs">As written: any of them.</param>
/// <param name="IsNot">Whether it must be none of them.</param>
public sealed record InMobCondition(ImmutableArray<string> Mobs, bool IsNot) : Condition
{
    /// <inheritdoc />
    public override string Subject => $"{(IsNot ? "not " : "")}in mob {string.Join(" or ", Mobs)}";

    /// <inheritdoc />
    public override Demand? Demand => null;

    /// <summary>Who else is on record says which mobs there are.</summary>
    public override bool LooksAtOthers => true;

    /// <inheritdoc />
    protected override Condition? Make(OtherParts others) => this;
}
