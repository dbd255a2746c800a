namespace Byrelaw.Language.Rulebooks.Conditions;

/// <summary>Time since the latest of some kinds: <c>at least 56 days since last calving</c>.</summary>
public sealed record TimeSinceCondition(TimeTest Test, ImmutableArray<Kind> Kinds) : Condition
{
    /// <inheritdoc />
    public override string Subject => string.Join(" or ", Kinds.Select(kind => kind.Name));

    /// <inheritdoc />
    public override Demand? Demand => Test;

    /// <inheritdoc />
    protected override Condition? Make(OtherParts others)
    {
        var test = others.Time(Test);
        return others.Kinds(Kinds) is { } kinds ? this with { Test = test, Kinds = kinds } : null;
    }
}
