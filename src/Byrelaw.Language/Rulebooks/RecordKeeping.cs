namespace Byrelaw.Language.Rulebooks;

/// <summary>What a farm says about its records.</summary>
/// <param name="Folder">As written, relative to the file.</param>
/// <param name="UpTo">The day the records reach, if said.</param>
/// <param name="Complete">What is complete since when: the farm's promises.</param>
/// <param name="LeaveOut">Kinds in the records that nobody declares and nobody minds.</param>
/// <param name="Span">Where.</param>
public sealed record RecordKeeping(
    string Folder, LocalDate? UpTo, ImmutableArray<Completeness> Complete, ImmutableArray<LeftOut> LeaveOut, SourceSpan Span)
{
    /// <summary>Numbers that look like one animal's, and what a person found.</summary>
    public ImmutableArray<ComparedNumbers> Compared { get; init; } = [];

    /// <summary>What blank cells of details mean in these records, instead of what the rule files say.</summary>
    public ImmutableArray<BlankOf> Blanks { get; init; } = [];

    /// <summary>Where the records stand, in order; none for the two landed files, <c>animals.csv</c> and <c>events.csv</c>.</summary>
    public ImmutableArray<RecordSource> Sources { get; init; } = [];

    /// <summary>What day it is: no records reach further. Null where nobody says.</summary>
    public LocalDate? Today { get; init; }

    /// <summary>The day up to which a person says, for one run, that everything is written down; null where nobody does.</summary>
    public LocalDate? RecordsTo { get; init; }

    /// <summary>The sheets that are being drawn, of which earlier ones are not held against them; null for none.</summary>
    public SheetsDrawn? Drawing { get; init; }

    /// <summary>Sheets that somebody has seen, each with the day: the ledger must have them.</summary>
    public ImmutableArray<(string Number, LocalDate Day)> SheetsNamed { get; init; } = [];

    /// <summary>The same by a person's word, for one run, that everything is written down up to a day: it stands in place of every <c>up to</c>. What
    /// promises end with, and of which day a sheet is, stays.</summary>
    public RecordKeeping ReachingTo(LocalDate day) => this with { UpTo = day, RecordsTo = day };
}

/// <summary>Which papers of a morning are drawn: they make earlier ones of the same morning, work and programme void.</summary>
/// <param name="Day">The morning.</param>
/// <param name="Works">The kinds of work, such as <c>H</c>.</param>
/// <param name="Programme">The programme, by its file's name; null for sheets that name none.</param>
public sealed record SheetsDrawn(LocalDate Day, ImmutableArray<string> Works, string? Programme)
{
    /// <summary>Whether they make a sheet void.</summary>
    public bool Replaces(LocalDate day, string work, string? programme) => day == Day && Works.Contains(work) && programme == Programme;
}

/// <summary>What a blank cell of a detail means in a farm's records.</summary>
/// <param name="Kind">Whose detail.</param>
/// <param name="Place">The place among its details.</param>
/// <param name="Value">One of the detail's values, in its declared spelling.</param>
/// <param name="Span">Where.</param>
public sealed record BlankOf(Kind Kind, int Place, string Value, SourceSpan Span);

/// <summary>What a person says of numbers that may be one animal's.</summary>
/// <param name="Numbers">The farm's own, two at least; an animal goes by the first.</param>
/// <param name="AreOne">Whether they are one animal.</param>
/// <param name="Because">The reason.</param>
/// <param name="Agreement">Who agreed.</param>
/// <param name="Span">Where.</param>
public sealed record ComparedNumbers(ImmutableArray<string> Numbers, bool AreOne, string Because, Agreement Agreement, SourceSpan Span);

/// <summary>A promise: every one of these kinds that happened from <paramref name="Since"/> on is on record.</summary>
/// <param name="Kinds">At least one.</param>
/// <param name="Since">The first day.</param>
/// <param name="Span">Where.</param>
public sealed record Completeness(ImmutableArray<Kind> Kinds, LocalDate Since, SourceSpan Span)
{
    /// <summary>The first day of a promise that names none.</summary>
    public static readonly LocalDate Always = new(1900, 1, 1);

    /// <summary>The last day; null for as far as the records reach.</summary>
    public LocalDate? Until { get; init; }

    /// <summary>True for <c>no KINDS on this farm</c>: complete, and there is none.</summary>
    public bool IsNone { get; init; }

    /// <summary>The reason; null where none is given.</summary>
    public string? Because { get; init; }

    /// <summary>Who agreed; null where nobody did.</summary>
    public Agreement? Agreement { get; init; }
}

/// <summary>A word of the records that nobody declares and the farm leaves out.</summary>
/// <param name="Word">As written.</param>
/// <param name="IsNot">The kind that it surely is not, though a hint says it may be; null where nobody said.</param>
/// <param name="Span">Where.</param>
public sealed record LeftOut(string Word, Kind? IsNot, SourceSpan Span);
