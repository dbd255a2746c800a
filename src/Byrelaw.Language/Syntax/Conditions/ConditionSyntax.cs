namespace Byrelaw.Language.Syntax.Conditions;

/// <summary>A condition as written.</summary>
internal abstract record ConditionSyntax : SyntaxNode
{
    /// <summary>What follows: windows, a comparison, and so on, in the order of writing.</summary>
    public ImmutableArray<TailSyntax> Tails { get; init; } = [];
}

/// <summary><c>no mastitis or metritis ...</c>, <c>at least 1 heat ...</c>.</summary>
internal sealed record CountSyntax(CountTestSyntax Test, ImmutableArray<NameSyntax> Counted) : ConditionSyntax;

/// <summary><c>at least 56 days since last calving</c>.</summary>
internal sealed record TimeSinceSyntax(Comparison Comparison, DurationSyntax Low, DurationSyntax? High, ImmutableArray<NameSyntax> Kinds) : ConditionSyntax
{
    /// <summary>Whether it is written <c>at least day 28 of last transfer</c>.</summary>
    public bool IsDayOf { get; init; }
}

/// <summary><c>at most 1 of her mob with serum copper ...</c>.</summary>
internal sealed record MobCountSyntax(CountTestSyntax Test, NameSyntax Measure) : ConditionSyntax;

/// <summary><c>latest body condition ...</c>, <c>change in body condition ...</c>; <c>lost at most 0.5 body condition ...</c> is a change too, its demand turned round.</summary>
internal sealed record ResultSyntax(Aggregate Aggregate, NameSyntax Name) : ConditionSyntax
{
    /// <summary>The limit of <c>lost</c> or <c>gained</c> where it is written below nought; null everywhere else.</summary>
    public AmountSyntax? BelowNought { get; init; }
}

/// <summary>A condition that starts with a name: a fact, a spell, a defined name, <c>age</c>, <c>parity</c>.</summary>
internal sealed record NamedSyntax(NameSyntax Name, bool Not) : ConditionSyntax;

/// <summary><c>in mob Hill or River</c>, <c>not in mob "Once-a-day"</c>.</summary>
internal sealed record InMobSyntax(ImmutableArray<NameSyntax> Mobs, bool Not) : ConditionSyntax;

/// <summary><c>any of</c>, <c>at least 2 of</c>: the conditions follow, a line each.</summary>
/// <param name="Kind">How they combine.</param>
/// <param name="Count">For <c>at least N of</c>; any other demand there is wrong.</param>
internal sealed record ListHeadSyntax(ListKind Kind, CountTestSyntax? Count) : ConditionSyntax;

/// <summary>A demand on a count; <c>no</c> is exactly 0.</summary>
/// <param name="Comparison">How.</param>
/// <param name="Low">The limit; null for <c>no</c>.</param>
/// <param name="High">The higher limit of <c>between</c>.</param>
/// <param name="LowUnit">A unit of time that stands after the lower limit, which is wrong in a count.</param>
internal sealed record CountTestSyntax(Comparison Comparison, NumberSyntax? Low, NumberSyntax? High, UnitSyntax? LowUnit = null) : SyntaxNode;
