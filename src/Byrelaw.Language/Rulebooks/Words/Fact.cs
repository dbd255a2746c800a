namespace Byrelaw.Language.Rulebooks.Words;

/// <summary>What a fact's value looks like.</summary>
public enum FactType
{
    /// <summary>One of <see cref="Fact.Values"/>.</summary>
    OneOf,

    /// <summary>A number without a unit.</summary>
    Number,

    /// <summary>A number in <see cref="Fact.Unit"/>.</summary>
    Amount,

    /// <summary>A date.</summary>
    Date,

    /// <summary>Any text.</summary>
    Text,

    /// <summary>An official number; 15 digits are held to ISO 11784, anything else is text.</summary>
    Identity,
}

/// <summary>Something that is true of an animal without a date: a column of <c>animals.csv</c>.</summary>
public sealed record Fact(string Name, ImmutableArray<string> AlsoNames, SourceSpan Declared)
{
    /// <summary>The place of this fact in <see cref="Vocabulary.Facts"/>.</summary>
    public required int Id { get; init; }

    /// <summary>What its value looks like.</summary>
    public FactType Type { get; init; }

    /// <summary>Declared values of a <see cref="FactType.OneOf"/> fact; empty for the others.</summary>
    public ImmutableArray<string> Values { get; init; } = [];

    /// <summary>Those of <see cref="Values"/> that other files add, and where.</summary>
    public ImmutableArray<(string Value, SourceSpan At)> Added { get; init; } = [];

    /// <summary>The unit of an <see cref="FactType.Amount"/> fact; null for the others.</summary>
    public Unit? Unit { get; init; }

    /// <summary>The numbers that a cow can have, in <see cref="Unit"/>, both ends included; null where nobody said.</summary>
    public Scale? Plausible { get; init; }
}

/// <summary>A state between two events, both days included.</summary>
/// <param name="Name">Declared spelling, such as <c>running with bull</c>.</param>
/// <param name="From">The event that starts it.</param>
/// <param name="Until">The event that ends it.</param>
/// <param name="Declared">Where.</param>
public sealed record Spell(string Name, EventKind From, EventKind Until, SourceSpan Declared)
{
    /// <summary>The age from which a male in an animal's mob counts as the spell too, as a bull does; null where none does.</summary>
    public TimeLength? WithMaleFrom { get; init; }
}
