namespace Byrelaw.Workshop.Carrying;

/// <summary>A programme's file for another season.</summary>
/// <param name="Text">The new file.</param>
/// <param name="Days">By how many days its dates were moved; whole weeks.</param>
/// <param name="Notes">What was done to which line of the old file, in its order.</param>
public sealed record Carried(string Text, int Days, ImmutableArray<CarryNote> Notes);

/// <summary>What was done to a part of the old file.</summary>
/// <param name="Kind">What.</param>
/// <param name="Line">Its first line in the old file, from 1.</param>
/// <param name="Lines">How many lines it has there.</param>
/// <param name="Text">Its first line, as written.</param>
public sealed record CarryNote(CarryKind Kind, int Line, int Lines, string Text);

/// <summary>What can be done to a part of a programme's file.</summary>
public enum CarryKind
{
    /// <summary>Its dates were moved.</summary>
    Moved,

    /// <summary>It was left out: it spoke of the old season only.</summary>
    Dropped,

    /// <summary>It was agreed for the old season: kept, and marked to be agreed again.</summary>
    ToRenew,

    /// <summary>It holds a date or a number that may be of the old season: kept as it is, to be looked at.</summary>
    LookAt,
}
