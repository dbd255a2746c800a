namespace Byrelaw.Language.Rulebooks.Conditions;

/// <summary>Standing in the herd: <c>breeding index not in the top 20% of the herd</c>.</summary>
public sealed record StandingCondition(Fact Fact, bool Not, double Percent, HerdGroup Group) : Condition
{
    /// <summary><c>of the herd with a value</c>: those whose cell is blank are not of those she is compared with.</summary>
    public bool WithValue { get; init; }

    /// <inheritdoc />
    public override string Subject => $"her place by {Fact.Name}";

    /// <inheritdoc />
    public override Demand? Demand => null;

    /// <inheritdoc />
    public override bool LooksAtOthers => true;

    /// <inheritdoc />
    protected override Condition? Make(OtherParts others) => others.Fact(Fact) is { } fact
        ? this with { Fact = fact, Percent = others.Number(new ConditionNumber(NumberPart.Limit, false, Percent, NumberSort.Share) { Lowest = 0.000001, Highest = 100 }) }
        : null;
}

/// <summary>Whom an animal is compared with.</summary>
public enum HerdGroup
{
    /// <summary>Every female present on the judging day.</summary>
    Herd,

    /// <summary>The cows among them.</summary>
    Cows,

    /// <summary>The heifers among them.</summary>
    Heifers,
}
