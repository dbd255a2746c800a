namespace Byrelaw.Judging.Verdicts;

/// <summary>Why the records do not say.</summary>
public enum MissingReason : byte
{
    /// <summary>No result in the window: someone has to test, score or weigh.</summary>
    NoResult,

    /// <summary>A sample is taken; its result is blank, pending or not a declared answer.</summary>
    ResultPending,

    /// <summary>The result allows values on both sides of the limit (<c>&lt;3</c>).</summary>
    ResultTooVague,

    /// <summary>The farm does not say that it keeps this kind of record over the days concerned.</summary>
    NotKept,

    /// <summary>Nothing says whether it ever happened.</summary>
    NeverRecorded,

    /// <summary>A row could not be read that may have said it.</summary>
    UnreadableRow,

    /// <summary>A row ends what nothing on record began; it is that row's line.</summary>
    StartNotOnRecord,

    /// <summary>A row that can be read may tell of it besides: whether it was so is not known.</summary>
    ToldBeside,

    /// <summary>Something is on record, and a detail of it, blank or not readable, would tell whether it is what is asked for.</summary>
    DetailNotKnown,

    /// <summary>A fact's cell is blank, or there is no such column.</summary>
    FactMissing,

    /// <summary>A fact's cell could not be read.</summary>
    FactUnreadable,

    /// <summary>Fewer of her mob have results than the rule asks for.</summary>
    TooFewOfTheMob,

    /// <summary>It is not on record which mob she is in.</summary>
    MobNotKnown,

    /// <summary>It is not on record in which mob a grown male runs; the subject is his number.</summary>
    BullsMobNotKnown,

    /// <summary>It is not on record whether one in her mob is a bull, or how old he is; the subject is his number.</summary>
    MayBeABull,

    /// <summary>Values of others in the herd are missing, so her standing is open.</summary>
    HerdValuesMissing,

    /// <summary>A fact has a value that a file adds and the file of the condition does not see.</summary>
    ValueNotForeseen,
}

/// <summary>Who can find out.</summary>
public enum SettledBy : byte
{
    /// <summary>Someone beside the animal, or with the farm's book: scan, palpate, score, read the tag, look back.</summary>
    Yards,

    /// <summary>A laboratory, or only time.</summary>
    LaboratoryOrTime,
}

/// <summary>A record that would settle, or help to settle, what is not known.</summary>
/// <param name="Reason">Why it is not known.</param>
/// <param name="Subject">The kind's or fact's name, such as <c>pregnancy test</c>, <c>born</c>, <c>sex</c>.</param>
/// <param name="From">First day the record may be dated; null for any.</param>
/// <param name="To">Last day it may be dated; null for any.</param>
/// <param name="SettledBy">Who can find out.</param>
/// <param name="Line">For a pending result or an unreadable row: its line of <c>events.csv</c> (of <c>animals.csv</c> for a fact); else 0.</param>
/// <param name="Needed">For a mob: how many more animals; else 0.</param>
public sealed record Missing(
    MissingReason Reason, string Subject, LocalDate? From, LocalDate? To, SettledBy SettledBy, int Line = 0, int Needed = 0)
{
    /// <summary>Which entries of the kind only: <c>with method not hand</c>; empty for all.</summary>
    public string Filter { get; init; } = "";

    /// <summary>For a result of another of her mob: whose it is, by number, or <c>mob:NAME</c> for one of the mob itself; empty for her own.</summary>
    public string Whose { get; init; } = "";

    /// <summary>The subject with its filter: <c>pregnancy test with method not hand</c>.</summary>
    public string What => Filter.Length == 0 ? Subject : $"{Subject} {Filter}";
}
