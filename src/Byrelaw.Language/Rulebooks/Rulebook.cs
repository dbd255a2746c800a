namespace Byrelaw.Language.Rulebooks;

/// <summary>All that the files of one programme say, read, bound and resolved through its layers.
/// Plain data: judging, comparing and printing read the same records.</summary>
public sealed record Rulebook
{
    /// <summary>The words of the farm.</summary>
    public required Vocabulary Vocabulary { get; init; }

    /// <summary>Defined conditions, each after those it uses.</summary>
    public ImmutableArray<Define> Defines { get; init; } = [];

    /// <summary>Resolved rules of all lists, in the order of reading; dropped ones are not among them.</summary>
    public ImmutableArray<Rule> Rules { get; init; } = [];

    /// <summary>The four rules that lie under every list with a floor, the program's own; none where the files lack the words for them: then
    /// each such list has a broken part.</summary>
    public ImmutableArray<Rule> Floor { get; init; } = [];

    /// <summary>What the files say themselves.</summary>
    public Rulebook WithoutFloor() => Floor.IsEmpty ? this : this with { Floor = [], Defines = [.. Defines.Where(define => !define.IsOfTheFloor)] };

    /// <summary>Resolved preferences of all lists.</summary>
    public ImmutableArray<Prefer> Prefers { get; init; } = [];

    /// <summary>Rules that this farm sets aside.</summary>
    public ImmutableArray<Drop> Drops { get; init; } = [];

    /// <summary>Rules set aside for one animal.</summary>
    public ImmutableArray<Waiver> Waivers { get; init; } = [];

    /// <summary>What the records look like when they are true.</summary>
    public ImmutableArray<RecordExpectation> Expectations { get; init; } = [];

    /// <summary>Expectations that single animals are not held to.</summary>
    public ImmutableArray<ExpectationWaiver> ExpectationWaivers { get; init; } = [];

    /// <summary>Troubles that people know of and live with, each with its reason.</summary>
    public ImmutableArray<Acceptance> Acceptances { get; init; } = [];

    /// <summary>What could not be read and may have been a rule: it breaks the list.</summary>
    public ImmutableArray<BrokenPart> BrokenParts { get; init; } = [];

    /// <summary>Worked examples of the programme's own file; those of used files are theirs.</summary>
    public ImmutableArray<Example> Examples { get; init; } = [];

    /// <summary>The programme; null for a rule file on its own.</summary>
    public Programme? Programme { get; init; }

    /// <summary>Methods, visits, tasks, rates and prices that a plan is made from.</summary>
    public PlanStatements Plans { get; init; } = PlanStatements.None;

    /// <summary>What the farm says about its records; null for a rule file on its own.</summary>
    public RecordKeeping? Records { get; init; }

    /// <summary>The files read, the programme's own first.</summary>
    public ImmutableArray<SourceFile> Files { get; init; } = [];
}

/// <summary>Lines that may have been a rule.</summary>
/// <param name="List">The list they stand in; null where that is not known, so every list is broken.</param>
/// <param name="Span">Where.</param>
public sealed record BrokenPart(string? List, SourceSpan Span);
