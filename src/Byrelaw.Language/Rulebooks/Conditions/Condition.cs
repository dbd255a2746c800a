namespace Byrelaw.Language.Rulebooks.Conditions;

/// <summary>Something that is true, false or not known of an animal on a day.</summary>
public abstract record Condition
{
    /// <summary>Where it is written.</summary>
    public required SourceSpan Span { get; init; }
}

/// <summary>How often something happened: <c>no mastitis or metritis in the last 30 days</c>.</summary>
/// <param name="Test">The demand.</param>
/// <param name="Counted">What counts; each kind (or answer) once a day.</param>
/// <param name="Windows">One or two; both must hold.</param>
public sealed record CountCondition(CountTest Test, ImmutableArray<Counted> Counted, ImmutableArray<Window> Windows) : Condition;

/// <summary>What a count counts: an event, or one answer of a test.</summary>
/// <param name="Kind">An event, or a test with <paramref name="Answer"/>.</param>
/// <param name="Answer">The place of the answer in <see cref="TestKind.Answers"/>; -1 for an event.</param>
public sealed record Counted(Kind Kind, int Answer = -1);

/// <summary>Time since the latest of some kinds: <c>at least 56 days since last calving</c>.</summary>
public sealed record TimeSinceCondition(TimeTest Test, ImmutableArray<Kind> Kinds) : Condition;

/// <summary><c>age at least 13 months</c>.</summary>
public sealed record AgeCondition(TimeTest Test) : Condition;

/// <summary><c>parity at most 6</c>.</summary>
public sealed record ParityCondition(CountTest Test) : Condition;

/// <summary>A fact that is a number or an amount: <c>breeding index at least 120</c>.</summary>
public sealed record FactNumberCondition(Fact Fact, NumberTest Test) : Condition;

/// <summary>A fact that is one of some values: <c>breed is one of Friesian, Jersey</c>.</summary>
/// <param name="Fact">A <see cref="FactType.OneOf"/>, text or identity fact.</param>
/// <param name="Values">Declared spelling; compared folded.</param>
/// <param name="IsNot">True for <c>is not</c>, the Kleene opposite.</param>
public sealed record FactTextCondition(Fact Fact, ImmutableArray<string> Values, bool IsNot) : Condition;

/// <summary>A fact that is a date: <c>dam genomic date is 2026-02-01</c>.</summary>
public sealed record FactDateCondition(Fact Fact, LocalDate Date, bool IsNot) : Condition;

/// <summary><c>official identity is recorded</c>.</summary>
public sealed record RecordedCondition(Fact Fact, bool IsNot) : Condition;

/// <summary>Which of the results in a window a condition looks at.</summary>
public enum Aggregate
{
    /// <summary>The latest; all of the latest day where there are several.</summary>
    Latest,

    /// <summary>The lowest.</summary>
    Lowest,

    /// <summary>The highest.</summary>
    Highest,

    /// <summary>The mean of all.</summary>
    Average,

    /// <summary>Latest minus earliest.</summary>
    Change,
}

/// <summary>A measured value: <c>latest body condition in the last 45 days between 4.0 and 5.5</c>.</summary>
/// <param name="Aggregate">Which value.</param>
/// <param name="Measure">Of what.</param>
/// <param name="Windows">None, one or two.</param>
/// <param name="Test">The demand, in the measure's declared unit.</param>
public sealed record MeasuredCondition(Aggregate Aggregate, MeasureKind Measure, ImmutableArray<Window> Windows, NumberTest Test) : Condition;

/// <summary>A test's latest result: <c>latest BVD virus is negative</c>.</summary>
/// <param name="Test">Which test.</param>
/// <param name="Windows">None, one or two.</param>
/// <param name="Answers">Places in <see cref="TestKind.Answers"/>.</param>
/// <param name="IsNot">True for <c>is not</c>.</param>
public sealed record TestCondition(TestKind Test, ImmutableArray<Window> Windows, ImmutableArray<int> Answers, bool IsNot) : Condition;

/// <summary>A value over her mob: <c>average liver copper of her mob in the last 90 days, from at least 5 animals, at least 95 umol/kg</c>.</summary>
/// <param name="Aggregate">Average, lowest or highest.</param>
/// <param name="Measure">Of what.</param>
/// <param name="Windows">None, one or two.</param>
/// <param name="FromAtLeast">With fewer animals sampled the answer is not known.</param>
/// <param name="Test">The demand.</param>
public sealed record MobMeasuredCondition(Aggregate Aggregate, MeasureKind Measure, ImmutableArray<Window> Windows, int FromAtLeast, NumberTest Test) : Condition;

/// <summary>How many of her mob have such a value: <c>at most 1 of her mob with serum copper in the last 60 days less than 7 umol/L, from at least 10 animals</c>.</summary>
public sealed record MobCountCondition(CountTest Count, MeasureKind Measure, ImmutableArray<Window> Windows, NumberTest Test, int FromAtLeast) : Condition;

/// <summary><c>running with bull</c>, <c>not running with bull in the last 35 days</c>.</summary>
/// <param name="Spell">Which spell.</param>
/// <param name="Not">True for <c>not</c>.</param>
/// <param name="Windows">None for the day of judging itself; else on any day of the window.</param>
public sealed record SpellCondition(Spell Spell, bool Not, ImmutableArray<Window> Windows) : Condition;

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

/// <summary>Standing in the herd: <c>breeding index not in the top 20% of the herd</c>.</summary>
public sealed record StandingCondition(Fact Fact, bool Not, double Percent, HerdGroup Group) : Condition;

/// <summary>A defined name: <c>cycling</c>, <c>not cycling</c>.</summary>
/// <param name="Define">The name of a <see cref="Define"/> of the rulebook, declared spelling.</param>
/// <param name="Index">Its place in <see cref="Rulebook.Defines"/>.</param>
/// <param name="Not">True for <c>not</c>.</param>
public sealed record NamedCondition(string Define, int Index, bool Not) : Condition;

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

/// <summary>A list of conditions, one level deep.</summary>
/// <param name="Kind">How they combine.</param>
/// <param name="Count">For <see cref="ListKind.AtLeastOf"/>; else 0.</param>
/// <param name="Items">At least one; none of them a list.</param>
public sealed record ListCondition(ListKind Kind, int Count, ImmutableArray<Condition> Items) : Condition;

/// <summary>A condition that could not be read: it breaks whatever it stands in.</summary>
public sealed record BrokenCondition : Condition;
