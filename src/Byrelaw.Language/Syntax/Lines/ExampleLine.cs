namespace Byrelaw.Language.Syntax.Lines;

/// <summary><c>example "..."</c>.</summary>
internal sealed record ExampleLine(TextSyntax Name) : HeadLine;

/// <summary><c>cow born 2021-08-10</c>.</summary>
/// <param name="Sort">What she is.</param>
/// <param name="Born">A date or a year as written; empty where it is not on record.</param>
internal sealed record AnimalLine(ExampleSort Sort, string Born) : BodyLine
{
    public override string? OnlyOnce => "cow, heifer, female, male or animal";
}

/// <summary>
/// <c>calving 2026-09-07</c>, <c>serum copper 2026-09-01 8 umol/L</c>, <c>breed Jersey</c>, <c>collection on 2026-10-12</c>: what the name
/// means tells which.
/// </summary>
/// <param name="Words">The name, and for a fact with words its value after it.</param>
/// <param name="IsOn">Whether <c>on</c> stands before the day.</param>
/// <param name="Day">The day; null for none.</param>
/// <param name="Value">What stands after it; null for nothing.</param>
internal sealed record RecordedLine(ImmutableArray<NameSyntax> Words, bool IsOn, DateSyntax? Day, RecordedValueSyntax? Value) : BodyLine
{
    /// <summary>What more is on record of it.</summary>
    public ImmutableArray<RecordedDetailSyntax> Details { get; init; } = [];
}

/// <summary><c>with method ultrasound</c>.</summary>
internal sealed record RecordedDetailSyntax(NameSyntax Detail, RecordedValueSyntax Value) : SyntaxNode;

/// <summary><c>5 of her mob serum copper 2026-09-01 8 umol/L</c>.</summary>
internal sealed record OfHerMobLine(NumberSyntax Animals, NameSyntax Measure, DateSyntax Day, RecordedValueSyntax Value) : BodyLine;

/// <summary><c>mob Back since 2025-06-01</c>.</summary>
internal sealed record InMobLine(NameSyntax Mob, DateSyntax Since) : BodyLine;

/// <summary><c>rank 5 of 100 by breeding index</c>.</summary>
internal sealed record RankLine(NumberSyntax Rank, NumberSyntax Of, NameSyntax Fact) : BodyLine
{
    public override string? OnlyOnce => "rank";
}

/// <summary><c>not kept heat, mating</c>.</summary>
internal sealed record NotKeptLine(ImmutableArray<NameSyntax> Kinds) : BodyLine;

/// <summary><c>judged on 2026-10-19</c>, <c>judged from 2026-10-19 to 2026-10-20</c>.</summary>
internal sealed record JudgedLine(DateSyntax First, DateSyntax? Last) : BodyLine
{
    public override string? OnlyOnce => "judged";
}

/// <summary><c>records to 2026-10-01</c>.</summary>
internal sealed record RecordsToLine(DateSyntax Day) : BodyLine
{
    public override string? OnlyOnce => "records to";
}

/// <summary><c>expect "Eight weeks calved" not met, until 2026-11-02</c>.</summary>
/// <param name="Rule">A rule or a preference in quotes; null where <paramref name="Name"/> is given.</param>
/// <param name="Name">A list or a defined condition.</param>
/// <param name="Answer">What is expected of it.</param>
/// <param name="AnswerSpan">Where that stands.</param>
/// <param name="Clauses">What else is expected, in the order of writing.</param>
internal sealed record ExpectLine(
    TextSyntax? Rule, NameSyntax? Name, ExpectedAnswer Answer, Sources.SourceSpan AnswerSpan, ImmutableArray<ExpectClauseSyntax> Clauses) : BodyLine;

/// <summary>What a record found, as written.</summary>
/// <param name="Text">A number, words, or a text.</param>
/// <param name="IsNumber">Whether it is a number.</param>
/// <param name="Bound"><c>&lt;</c>, <c>&gt;</c> or nothing.</param>
/// <param name="Unit">The unit; null for none.</param>
internal sealed record RecordedValueSyntax(string Text, bool IsNumber, string Bound, UnitSyntax? Unit) : SyntaxNode;

/// <summary>What else is expected of an answer.</summary>
/// <param name="Kind">Which sort of clause.</param>
/// <param name="Day">For the three with a day.</param>
/// <param name="Names">For the two with names; a text is the name of a rule.</param>
internal sealed record ExpectClauseSyntax(ExpectClause Kind, DateSyntax? Day, ImmutableArray<NameSyntax> Names) : SyntaxNode;

/// <summary>Which sort of clause stands after an expected answer.</summary>
internal enum ExpectClause
{
    /// <summary><c>from DATE</c>.</summary>
    From,

    /// <summary><c>until DATE</c>.</summary>
    Until,

    /// <summary><c>not before DATE</c>.</summary>
    NotBefore,

    /// <summary><c>because of NAMES</c>.</summary>
    BecauseOf,

    /// <summary><c>missing NAMES</c>.</summary>
    Missing,
}
