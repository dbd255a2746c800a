namespace Byrelaw.Language.Rulebooks.Plans;

/// <summary>Something that must be done by a day.</summary>
public sealed record PlanTask
{
    /// <summary>Unique in the rulebook.</summary>
    public required string Name { get; init; }

    /// <summary>The list whose animals it is for; null for a task of the farm.</summary>
    public string? List { get; init; }

    /// <summary>Whether it is to be done for each session; else once, for the first.</summary>
    public bool EachSession { get; init; }

    /// <summary>The day by which it must be finished, results in hand; null where what it settles says so.</summary>
    public DayReference? Due { get; init; }

    /// <summary>Who decides whether to go on, where it is such a decision; empty for other tasks.</summary>
    public ImmutableArray<string> DecidedBy { get; init; } = [];

    /// <summary>What becomes of the treated if it is decided to stop; null for other tasks.</summary>
    public string? IfStopped { get; init; }

    /// <summary>Whether it is a decision to go on or to stop.</summary>
    public bool IsDecision => !DecidedBy.IsEmpty;

    /// <summary>Done earlier than this it does not count; null for no limit.</summary>
    public DayReference? NotBefore { get; init; }

    /// <summary>From the sample to its result; in days or weeks.</summary>
    public TimeLength? ResultsTake { get; init; }

    /// <summary>How long the task itself takes: a course, a treatment, an office; in days or weeks.</summary>
    public TimeLength? Takes { get; init; }

    /// <summary>Days from starting it to having its result: what it takes, and what results take.</summary>
    public int LeadDays => TakesDays + Days(ResultsTake);

    /// <summary>Days from starting it to the day that its record is of.</summary>
    public int TakesDays => Days(Takes);

    /// <summary>Rules whose missing answers it settles.</summary>
    public ImmutableArray<string> SettlesRules { get; init; } = [];

    /// <summary>Events, measures and tests whose missing records it settles.</summary>
    public ImmutableArray<Kind> SettlesKinds { get; init; } = [];

    /// <summary>What it costs; null where it is not said.</summary>
    public TaskCost? Cost { get; init; }

    /// <summary>Whether a layer says that this farm does not need it.</summary>
    public bool IsNotNeeded { get; init; }

    /// <summary>What must be said beside it; filled from the words in its name.</summary>
    public ImmutableArray<Caution> Cautions { get; init; } = [];

    /// <summary>The reason.</summary>
    public string? Because { get; init; }

    /// <summary>Where it comes from.</summary>
    public string? Source { get; init; }

    /// <summary>Where it is written.</summary>
    public required SourceSpan Span { get; init; }

    private static int Days(TimeLength? length) => length is { } some ? some.Count * (some.Unit == TimeUnit.Weeks ? 7 : 1) : 0;
}

/// <summary><c>done "Book the scanner" on 2026-10-28 for session 1</c>: a person's word that a task is done. It touches no answer.</summary>
/// <param name="Task">The task's name.</param>
/// <param name="On">The day.</param>
/// <param name="Session">For which session; null for a task that is once.</param>
/// <param name="Span">Where.</param>
public sealed record TaskDone(string Task, LocalDate On, int? Session, SourceSpan Span);

/// <summary><c>stopped session 2</c>: a session is given up; nobody is treated for it any more.</summary>
/// <param name="Session">Which.</param>
/// <param name="Because">Why.</param>
/// <param name="Agreement">Who agreed, and when.</param>
/// <param name="Span">Where.</param>
public sealed record StoppedSession(int Session, string Because, Agreement Agreement, SourceSpan Span);

/// <summary>What a task costs.</summary>
/// <param name="Amount">How much.</param>
/// <param name="IsPerAnimal">For each animal (or sample); else once.</param>
public sealed record TaskCost(Money Amount, bool IsPerAnimal);
