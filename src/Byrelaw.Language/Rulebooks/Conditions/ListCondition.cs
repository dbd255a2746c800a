namespace Byrelaw.Language.Rulebooks.Conditions;

/// <summary>A list of conditions. As written it is one level deep; what a change of a safety rule adds to a list stands beside that list.</summary>
/// <param name="Kind">How they combine.</param>
/// <param name="Count">For <see cref="ListKind.AtLeastOf"/>; else 0.</param>
/// <param name="Items">At least one.</param>
public sealed record ListCondition(ListKind Kind, int Count, ImmutableArray<Condition> Items) : Condition(Items)
{
    /// <summary>How many of them must hold; of <see cref="ListKind.NoneOf"/>, how many at least may not.</summary>
    public int AtLeast => Kind switch { ListKind.AllOf => Items.Length, ListKind.AtLeastOf => Count, _ => 1 };

    /// <inheritdoc />
    public override string Subject => string.Join("; ", Items.Select(item => item.Subject));

    /// <inheritdoc />
    public override Demand? Demand => null;

    /// <summary>The same list of other conditions, as many.</summary>
    public ListCondition WithItems(ImmutableArray<Condition> items) => new(Kind, Count, items) { Span = Span };

    /// <inheritdoc />
    protected override Condition? Make(OtherParts others)
    {
        var count = Kind == ListKind.AtLeastOf
            ? (int)others.Number(new ConditionNumber(NumberPart.OfTheList, false, Count, NumberSort.Count) { Lowest = 1, Highest = Items.Length })
            : Count;
        return OtherParts.All(Items, (item, _) => others.Item(item)) is { } items ? this with { Count = count, Items = items } : null;
    }
}

/// <summary>How a list's bullets combine.</summary>
public enum ListKind
{
    /// <summary>At least one.</summary>
    AnyOf,

    /// <summary>Every one.</summary>
    AllOf,

    /// <summary>Not one.</summary>
    NoneOf,

    /// <summary>At least <see cref="ListCondition.Count"/>.</summary>
    AtLeastOf,
}
