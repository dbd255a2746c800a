namespace Byrelaw.Language.Rulebooks;

/// <summary>What records look like when they are true. Where they do not, promises of <see cref="Else"/> do not count.</summary>
public abstract record RecordExpectation
{
    /// <summary>Unique among expectations and rules.</summary>
    public required string Name { get; init; }

    /// <summary>A safety expectation is never dropped, and waived for single animals only.</summary>
    public bool IsSafety { get; init; }

    /// <summary>The kinds whose promises fall.</summary>
    public required ImmutableArray<Kind> Else { get; init; }

    /// <summary>The reason; null where none is given.</summary>
    public string? Because { get; init; }

    /// <summary>Where it comes from; null where none is given.</summary>
    public string? Source { get; init; }

    /// <summary>Who agreed to a change of it, and when; null where it is no change.</summary>
    public Agreement? Agreement { get; init; }

    /// <summary>Whether it is what a change asks besides, under the name of what it changes: both are tried.</summary>
    public bool IsAdded { get; init; }

    /// <summary>A line of it could not be read: the promises of <see cref="Else"/> do not count.</summary>
    public bool IsBroken { get; init; }

    /// <summary>Where it is written.</summary>
    public required SourceSpan Span { get; init; }
}

/// <summary>Of each entry another one stands so many days before or after it:
/// <c>every calving comes 200 to 320 days after mating</c>.</summary>
public sealed record EntryExpectation : RecordExpectation
{
    /// <summary>Each of these entries is tried.</summary>
    public required Counted Every { get; init; }

    /// <summary>True where the other one comes later (<c>comes at most 10 months before</c>); false where it came before.</summary>
    public bool IsBefore { get; init; }

    /// <summary>The nearer limit; 0 days for <c>at most</c>.</summary>
    public required TimeLength From { get; init; }

    /// <summary>The farther limit.</summary>
    public required TimeLength To { get; init; }

    /// <summary>Entries that will do.</summary>
    public ImmutableArray<Counted> Others { get; init; } = [];

    /// <summary>Spells that will do on any of their days.</summary>
    public ImmutableArray<Spell> Spells { get; init; } = [];

    /// <summary>True where an entry that fails makes the kinds not known of its animal only.</summary>
    public bool ForHer { get; init; }

    /// <summary>Whether what comes before will do only where no calving, abortion or empty test stands between: the pregnancy of the service before has ended.</summary>
    public bool IsOfOnePregnancy { get; init; }

    /// <summary>Above which share of failing entries the promises fall, in per cent; 0 where <see cref="ForHer"/>.</summary>
    public double OverPercent { get; init; }
}

/// <summary>So many entries a year for so many cows: <c>at least 1 lameness a year for every 20 cows</c>.</summary>
public sealed record RateExpectation : RecordExpectation
{
    /// <summary>What is counted.</summary>
    public required Kind Kind { get; init; }

    /// <summary>Entries a year.</summary>
    public required double Count { get; init; }

    /// <summary>For so many cows.</summary>
    public required double Cows { get; init; }
}

/// <summary>An expectation of which no more can be read than whose promises it is about.</summary>
public sealed record UnreadableExpectation : RecordExpectation;

/// <summary>An expectation that one animal's entries are not counted by.</summary>
/// <param name="Expectation">Its name.</param>
/// <param name="Animal">The farm's own number.</param>
/// <param name="Until">The last day on which it holds; null until it is taken out.</param>
/// <param name="Because">The reason.</param>
/// <param name="Agreement">Who and when.</param>
/// <param name="Span">Where.</param>
public sealed record ExpectationWaiver(string Expectation, string Animal, LocalDate? Until, string Because, Agreement Agreement, SourceSpan Span);
