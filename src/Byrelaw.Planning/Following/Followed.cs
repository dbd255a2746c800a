namespace Byrelaw.Planning.Following;

/// <summary>What is known of a recipient since her transfer. It says what is on record; whether she may be used again is for the lists to say.</summary>
public enum FollowState
{
    /// <summary>Her first check is past, and nobody has checked her: she counts neither as empty nor as in calf.</summary>
    Overdue,

    /// <summary>Her first check is due.</summary>
    ToCheck,

    /// <summary>It is too early to check her.</summary>
    Waiting,

    /// <summary>The latest test found a calf.</summary>
    Pregnant,

    /// <summary>She was in calf, and is not any more.</summary>
    Lost,

    /// <summary>A test late enough for its method found none.</summary>
    Empty,

    /// <summary>She calved.</summary>
    Calved,
}

/// <summary>One recipient since her latest transfer.</summary>
/// <param name="Animal">Her place in the herd.</param>
/// <param name="Number">Her number on the farm.</param>
/// <param name="Embryo">The embryo's label; null where the row names none.</param>
/// <param name="Dates">Her dates.</param>
/// <param name="State">What is known of her.</param>
public sealed record Followed(int Animal, string Number, string? Embryo, FollowDates Dates, FollowState State)
{
    /// <summary>The heat of her return watch; null for none.</summary>
    public LocalDate? Returned { get; init; }

    /// <summary>The latest test since the transfer of which the answer is known; null for none.</summary>
    public LocalDate? Tested { get; init; }

    /// <summary>Whether a test found none too early for its method: it proves nothing.</summary>
    public bool IsEmptyTooEarly { get; init; }

    /// <summary>Of one who lost it: after which day; null where no test found a calf before.</summary>
    public LocalDate? LostAfter { get; init; }

    /// <summary>And on or before which.</summary>
    public LocalDate? LostBy { get; init; }

    /// <summary>The day on which she calved; null for none.</summary>
    public LocalDate? Calved { get; init; }

    /// <summary>Whether her second check is past, and nobody has done it.</summary>
    public bool IsSecondOverdue { get; init; }

    /// <summary>Days of the pregnancy on a day.</summary>
    public int DayOn(LocalDate day) => Period.DaysBetween(Dates.DayZero, day);
}
