namespace Byrelaw.Judging.Verdicts;

/// <summary>What would turn a condition that is not met.</summary>
public enum RemedyKind : byte
{
    /// <summary>Time alone: from <see cref="Remedy.Date"/>.</summary>
    Time,

    /// <summary>A new event of <see cref="Remedy.Subjects"/> (and then time).</summary>
    NewEvent,

    /// <summary>A new result of <see cref="Remedy.Subjects"/>.</summary>
    NewResult,

    /// <summary>Nothing: a limit is passed that time cannot undo, or a recorded fact says so.</summary>
    ForGood,
}

/// <summary>The smallest change that would turn a condition that is not met on the judging days.</summary>
/// <param name="Kind">What sort of change.</param>
/// <param name="Subjects">Kinds or facts by name.</param>
/// <param name="Date">For <see cref="RemedyKind.Time"/>: from when.</param>
/// <param name="HadItBeen">It would be met had the event happened by this day (for demands on time since it); else null.</param>
public sealed record Remedy(RemedyKind Kind, ImmutableArray<string> Subjects, LocalDate? Date = null, LocalDate? HadItBeen = null);
