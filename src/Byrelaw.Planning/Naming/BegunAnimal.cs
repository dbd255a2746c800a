namespace Byrelaw.Planning.Naming;

/// <summary>An animal that the book says is begun: by a row that marks treatment and names its method.</summary>
/// <param name="Animal">Her place in the herd.</param>
/// <param name="Method">The method.</param>
/// <param name="Start">Her own day 0: her later steps and her timed heat are counted from it.</param>
/// <param name="Sessions">The sessions that can be meant, by number: the one that the row names, else all of which one of her heats serves a transfer.</param>
public sealed record BegunAnimal(int Animal, Method Method, LocalDate Start, ImmutableArray<int> Sessions)
{
    /// <summary>Whether she may go on: the safety rules for treatment hold today and on each of her days to come, and each day that is past is on record.</summary>
    public BegunState State { get; init; }

    /// <summary>The session; null where none can be meant, or several can and nobody wrote which.</summary>
    public int? Session => Sessions is [var only] ? only : null;
}

/// <summary>Whether a begun animal may go on.</summary>
public enum BegunState
{
    /// <summary>She may.</summary>
    GoesOn,

    /// <summary>She does not surely pass the safety rules for treatment. A device comes out all the same.</summary>
    NotSafe,

    /// <summary>A step whose day is past is not surely on record: nothing is, or nobody can say that it was hers.</summary>
    StepMissing,

    /// <summary>The programme names her as a donor: she carries nobody's embryo.</summary>
    IsDonor,

    /// <summary>Her session is given up.</summary>
    Stopped,

    /// <summary>What her row says of its session or its step cannot be read: nobody knows what she was begun for.</summary>
    RowUnreadable,
}
