namespace Byrelaw.Records.Herds;

/// <summary>Something about the records that is not believed, or not altogether, and so holds answers back.</summary>
public abstract record Doubted;

/// <summary>An entry that is not as expected, and nobody waived.</summary>
/// <param name="Animal">Whose; -1 where a row that cannot be read may be anybody's.</param>
/// <param name="Day">When; <see cref="Day.Start"/> where that cannot be read.</param>
/// <param name="Line">Of the events' file.</param>
/// <param name="IsUnreadable">Whether it is a row that cannot be read and may be such an entry.</param>
public readonly record struct Unexpected(int Animal, int Day, int Line, bool IsUnreadable)
{
    /// <summary>The line of a row that cannot be read, and but for which it would not fail: it may have ended the pregnancy before. 0 for none.</summary>
    public int ButFor { get; init; }
}

/// <summary>An expectation that too many entries fail: the promises of its kinds do not count, for anyone.</summary>
/// <param name="Expectation">Which.</param>
/// <param name="Counted">How many entries count.</param>
/// <param name="Failing">Those that fail.</param>
/// <param name="Waived">How many entries a person took out of the count.</param>
/// <param name="Fallen">Kinds that were promised and are not believed.</param>
public sealed record ExpectationFails(
    EntryExpectation Expectation, int Counted, ImmutableArray<Unexpected> Failing, int Waived, ImmutableArray<Kind> Fallen) : Doubted;

/// <summary>An expectation that some entries fail, but too few to doubt the promises.</summary>
public sealed record ExpectationStrained(EntryExpectation Expectation, int Counted, ImmutableArray<Unexpected> Failing, int Waived) : Doubted;

/// <summary>Entries that contradict other records of the same animal: from each to her next, kinds are not known of her.</summary>
public sealed record Contradictions(EntryExpectation Expectation, ImmutableArray<Unexpected> Entries) : Doubted;

/// <summary>Animals whose parity is higher than the calvings on record, though all their calvings are promised.</summary>
/// <param name="Animals">Their places.</param>
public sealed record ParityTooHigh(ImmutableArray<int> Animals) : Doubted;

/// <summary>A kind of which implausibly few entries are on record: its promise does not count.</summary>
/// <param name="Expectation">Which.</param>
/// <param name="Found">Entries on the promised days.</param>
/// <param name="CowYears">Over how many years of cows.</param>
/// <param name="Fallen">Kinds that were promised and are not believed.</param>
public sealed record TooFewEntries(RateExpectation Expectation, int Found, double CowYears, ImmutableArray<Kind> Fallen) : Doubted;

/// <summary>An expectation that cannot be read: the promises of its kinds do not count.</summary>
public sealed record ExpectationUnreadable(RecordExpectation Expectation, ImmutableArray<Kind> Fallen) : Doubted;

/// <summary>A kind that is no longer written down where in other years it was: its records reach the day before the silence only.</summary>
/// <param name="Kind">Which.</param>
/// <param name="From">The first silent day.</param>
/// <param name="To">The last.</param>
/// <param name="Strays">How many of these days hold an entry all the same.</param>
public sealed record FallenSilent(Kind Kind, int From, int To, int Strays) : Doubted;

/// <summary>A promise that begins after records that were not as expected, without a reason and an agreement.</summary>
public sealed record BegunAfterTrouble(EntryExpectation Expectation, int Counted, int Failing, ImmutableArray<Kind> Fallen) : Doubted;

/// <summary>A kind that the farm says there is none of, though there is: the promise counts as not written.</summary>
/// <param name="Kind">Which.</param>
/// <param name="Animal">Whose entry, or the grown male.</param>
/// <param name="Day">The entry's day; <see cref="Day.Start"/> for a male.</param>
/// <param name="Line">The entry's line, or 0 for a male.</param>
public sealed record NoneButOne(Kind Kind, int Animal, int Day, int Line) : Doubted
{
    /// <summary>Whether the row cannot be read, and may be one.</summary>
    public bool IsUnreadable { get; init; }
}

/// <summary>A promised kind of which nobody says how far it reaches, and nothing is on record: the promise covers nothing.</summary>
public sealed record NothingToReach(Kind Kind) : Doubted;

/// <summary>No row of the events' file says anything: a book without a row bears out no promise.</summary>
/// <param name="Fallen">Kinds that were promised and are not believed.</param>
public sealed record EmptyBook(ImmutableArray<Kind> Fallen) : Doubted;

/// <summary>Rows of a source that the farm's own line leaves out.</summary>
/// <param name="File">As shown.</param>
/// <param name="Heading">The column that decides.</param>
/// <param name="Cell">What stands there.</param>
/// <param name="Count">How many.</param>
public sealed record RowsLeftOut(string File, string Heading, string Cell, int Count) : Doubted;

/// <summary>A word for what happened that the farm leaves out, and that stands in its records.</summary>
/// <param name="Word">As the farm's file writes it.</param>
/// <param name="Rows">How many rows say it.</param>
public readonly record struct WordLeftOut(string Word, int Rows);

/// <summary>Kinds that the farm's own file declares and the records hold, and that no rule reads; and words that it leaves out. Nothing comes of it.</summary>
/// <param name="Kinds">Each, and how many entries of it are on record.</param>
public sealed record NotReadByRules(ImmutableArray<(Kind Kind, int Entries)> Kinds) : Doubted
{
    /// <summary>Words that are left out.</summary>
    public ImmutableArray<WordLeftOut> LeftOut { get; init; } = [];
}

/// <summary>Where a word stands that may be a kind that is promised.</summary>
public enum OverlookedIn
{
    /// <summary>Among the words of the records: left out, or read as another kind.</summary>
    Word,

    /// <summary>In a source whose own line reads it as something else, or leaves it out.</summary>
    Bullet,

    /// <summary>In a rule file, which declares it as something else: only words that nobody declares are left out.</summary>
    RuleFile,

    /// <summary>Over a column that nobody reads, that is left out, or that is read as another kind.</summary>
    Heading,

    /// <summary>In a cell that is read as blank, or whose row is left out.</summary>
    Cell,

    /// <summary>As the name of a fact that some animal has.</summary>
    Fact,
}

/// <summary>A word of the records that may be a kind that is promised, and is declared otherwise, left out or not read: the promise does not count.</summary>
/// <param name="Hint">The word, and what it may mean.</param>
/// <param name="Fallen">The kind that was promised and is not believed.</param>
/// <param name="In">Where it stands.</param>
public sealed record MayBeOverlooked(Hint Hint, Kind Fallen, OverlookedIn In = OverlookedIn.Word) : Doubted;

/// <summary>Files beside the records that nobody reads though they hold the same columns, or tell of services and calves, in rows that the records do not have: no promise counts.</summary>
/// <param name="Files">As shown.</param>
/// <param name="Fallen">Kinds that were promised and are not believed.</param>
public sealed record FilesNotRead(ImmutableArray<string> Files, ImmutableArray<Kind> Fallen) : Doubted;
