namespace Byrelaw.Records.Herds;

/// <summary>Why rows are doubted though nobody made a promise about them.</summary>
public enum RowDoubt
{
    /// <summary>Two rows that became one.</summary>
    TwoInOne,

    /// <summary>The file breaks off in this row.</summary>
    FileBreaksOff,

    /// <summary>The file ends without a line end: the last cell may be cut.</summary>
    LastCellCut,

    /// <summary>A decimal comma may have moved the cells.</summary>
    CommaInNumber,

    /// <summary>A day more than a year after all others, where nobody says how far the records reach.</summary>
    FarAhead,

    /// <summary>A value that no cow can have.</summary>
    Implausible,

    /// <summary>A birth so long ago that nobody of that age is in a herd.</summary>
    BornLongAgo,

    /// <summary>One sample of a mob that stands there twice.</summary>
    SameSample,

    /// <summary>What only females have, of a male.</summary>
    NotForMales,

    /// <summary>What only bulls do, of a steer.</summary>
    SteerAsBull,

    /// <summary>Something after she left.</summary>
    AfterLeaving,

    /// <summary>An animal that was bought, by its own row, and no day on which she came.</summary>
    BoughtWithoutDay,

    /// <summary>An animal of which nobody can read whether she was bought, and no day on which she came.</summary>
    OriginUnreadable,

    /// <summary>An animal that joined after a test that found a calf, or may have, with no calving between.</summary>
    InCalfWhenSheCame,

    /// <summary>A parity, or the day that it is of, that cannot be read.</summary>
    ParityUnreadable,

    /// <summary>The end of a spell, and no start before it.</summary>
    EndWithoutStart,

    /// <summary>A mob that one animal alone is given, by a name that may be a slip for another's, or speaks of cows and is a bull's.</summary>
    MobNamedOnce,

    /// <summary>A calving too soon after another, or after a service, or after a row that may be one.</summary>
    CalvedAgainSoon,
}

/// <summary>A row of one of the two files.</summary>
/// <param name="Animal">Whose; -1 where that cannot be read, or is not asked.</param>
/// <param name="Day">When; <see cref="Day.Start"/> where that cannot be read.</param>
/// <param name="Line">From 1.</param>
/// <param name="IsOfAnimals">Whether it stands in <c>animals.csv</c>.</param>
public readonly record struct RowInDoubt(int Animal, int Day, int Line, bool IsOfAnimals = false);

/// <summary>Rows that are doubted for one reason.</summary>
public sealed record RowsInDoubt(RowDoubt Why, ImmutableArray<RowInDoubt> Rows) : Doubted;

/// <summary>Numbers that stand in several rows, and no animal has them: rather animals that are missing from the list than slips of a pen. What such a row says may be anybody's all
/// the same, for a number that is nobody's may be a second one of an animal that is listed.</summary>
public sealed record NotListed(ImmutableArray<NumberNotListed> Numbers) : Doubted;

/// <summary>A number that is no animal's.</summary>
/// <param name="Number">As it stands in the records.</param>
/// <param name="Rows">The rows it stands in.</param>
public readonly record struct NumberNotListed(string Number, ImmutableArray<RowInDoubt> Rows);

/// <summary>Animals that may be one under two numbers: what happened to one may have happened to the other.</summary>
public sealed record TwoNumbers(ImmutableArray<DoubleNumbers> Pairs) : Doubted;

/// <summary>Two animals that may be one.</summary>
/// <param name="First">The one.</param>
/// <param name="Second">The other.</param>
/// <param name="Why">What speaks for it.</param>
public readonly record struct DoubleNumbers(int First, int Second, Likeness Why);

/// <summary>Why two animals may be one.</summary>
public enum Likeness
{
    /// <summary>Their official identities are alike.</summary>
    Identity,

    /// <summary>Their numbers are alike.</summary>
    Number,

    /// <summary>A person says that they are one, though sex or birth speaks against it.</summary>
    Said,
}
