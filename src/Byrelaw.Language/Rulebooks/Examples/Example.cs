namespace Byrelaw.Language.Rulebooks.Examples;

/// <summary>A made-up animal with her records, the day she is judged on, and what is expected then.</summary>
public sealed record Example
{
    /// <summary>Unique in its file.</summary>
    public required string Name { get; init; }

    /// <summary>What she is.</summary>
    public required ExampleSort Sort { get; init; }

    /// <summary>Her day or year of birth as records have it (ISO 8601); empty where it is not on record.</summary>
    public required string Born { get; init; }

    /// <summary>Where she is introduced.</summary>
    public required SourceSpan AnimalSpan { get; init; }

    /// <summary>What happened to her, and samples of her mob, in the order of writing.</summary>
    public ImmutableArray<ExampleRecord> Records { get; init; } = [];

    /// <summary>What is true of her without a date; <c>parity</c> is among them.</summary>
    public ImmutableArray<ExampleFact> Facts { get; init; } = [];

    /// <summary>Where she stands in the herd; null where nobody says.</summary>
    public ExampleRank? Rank { get; init; }

    /// <summary>Kinds of which nothing on record does not mean that nothing happened.</summary>
    public ImmutableArray<Kind> NotKept { get; init; } = [];

    /// <summary>Dates of the programme that rules name.</summary>
    public ImmutableArray<ProgrammeDate> Dates { get; init; } = [];

    /// <summary>The first day she is judged on.</summary>
    public required LocalDate JudgedFrom { get; init; }

    /// <summary>The last; the same for a single day.</summary>
    public required LocalDate JudgedTo { get; init; }

    /// <summary>The day the records reach; the last judged day where nothing else is said.</summary>
    public required LocalDate RecordsTo { get; init; }

    /// <summary>What is expected; at least one.</summary>
    public required ImmutableArray<Expectation> Expectations { get; init; }

    /// <summary>Where.</summary>
    public required SourceSpan Span { get; init; }
}

/// <summary>What the animal of an example is.</summary>
public enum ExampleSort
{
    /// <summary>A female that has calved.</summary>
    Cow,

    /// <summary>A female that has not.</summary>
    Heifer,

    /// <summary>A female.</summary>
    Female,

    /// <summary>A male.</summary>
    Male,

    /// <summary>An animal whose sex is not on record.</summary>
    Animal,
}

/// <summary>Something on record of her or of her mob.</summary>
/// <param name="Kind">What happened, was measured or tested.</param>
/// <param name="Date">When.</param>
/// <param name="Value">As records have it: <c>7</c>, <c>&lt;3</c>, <c>negative</c>, <c>pending</c>, a mob's name; empty for an event.</param>
/// <param name="Unit">As written; empty for none.</param>
/// <param name="OfHerMob">How many other animals of her mob had this result; 0 for her own.</param>
/// <param name="Span">Where.</param>
public sealed record ExampleRecord(Kind Kind, LocalDate Date, string Value, string Unit, int OfHerMob, SourceSpan Span)
{
    /// <summary>Details by declared name, as records have them.</summary>
    public ImmutableArray<(string Detail, string Value)> Details { get; init; } = [];
}

/// <summary>What is true of her without a date.</summary>
/// <param name="Name">The fact's declared name, or <c>parity</c>.</param>
/// <param name="Value">As records have it.</param>
/// <param name="Span">Where.</param>
public sealed record ExampleFact(string Name, string Value, SourceSpan Span);

/// <summary>Where she stands by a fact that is a number.</summary>
/// <param name="Rank">From 1: so many less one have a greater value.</param>
/// <param name="Of">How many there are with her.</param>
/// <param name="Fact">By what.</param>
/// <param name="Span">Where.</param>
public sealed record ExampleRank(int Rank, int Of, Fact Fact, SourceSpan Span);
