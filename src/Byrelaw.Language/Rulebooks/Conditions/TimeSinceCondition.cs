namespace Byrelaw.Language.Rulebooks.Conditions;

/// <summary>Time since the latest of some kinds: <c>at least 56 days since last calving</c>.</summary>
public sealed record TimeSinceCondition(TimeTest Test, ImmutableArray<Kind> Kinds) : Condition
{
    /// <summary><c>at least day 28 of last transfer</c>: the days are those of the embryo, so its age on the day of transfer is taken
    /// off. Of an embryo whose age is not known, as now of all, nothing is.</summary>
    public bool IsDayOf { get; init; }

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
