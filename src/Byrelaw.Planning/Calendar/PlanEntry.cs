namespace Byrelaw.Planning.Calendar;

/// <summary>What an entry of the calendar is about.</summary>
public enum EntryKind
{
    /// <summary>The last day on which to start a task.</summary>
    TaskStart,

    /// <summary>The first day of a time in which nothing may happen to an animal.</summary>
    CleanTime,

    /// <summary>A treatment of recipients.</summary>
    Treatment,

    /// <summary>A treatment of donors.</summary>
    DonorTreatment,

    /// <summary>Watching for heat.</summary>
    HeatWatch,

    /// <summary>Collection of eggs, or a flush.</summary>
    Collection,

    /// <summary>Transfer of embryos.</summary>
    Transfer,

    /// <summary>The planned start of mating.</summary>
    StartOfMating,

    /// <summary>Calves due.</summary>
    Calving,
}

/// <summary>One entry of the calendar.</summary>
/// <param name="Id">Stays the same when its days move, so that importing the calendar again moves it instead of doubling it; unique in a plan.</param>
/// <param name="Kind">What it is about.</param>
/// <param name="From">The day, or the first of several.</param>
/// <param name="To">The last day; the same for one.</param>
/// <param name="Session">The session; null for what belongs to none.</param>
/// <param name="Subject">The method's, task's or rule's name; null for others.</param>
public sealed record PlanEntry(string Id, EntryKind Kind, LocalDate From, LocalDate To, int? Session, string? Subject)
{
    /// <summary>For a treatment: what is done.</summary>
    public MethodStep? Step { get; init; }

    /// <summary>For a treatment, or watching for heat: of how many animals; null where nobody is named by name.</summary>
    public int? Animals { get; init; }

    /// <summary>For a task: its dates and animals.</summary>
    public LeadTimes.TaskDates? Task { get; init; }

    /// <summary>What must be said beside it.</summary>
    public ImmutableArray<Caution> Cautions { get; init; } = [];

    /// <summary>What is wrong with its day.</summary>
    public ImmutableArray<Clash> Clashes { get; init; } = [];
}
