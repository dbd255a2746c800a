namespace Byrelaw.Planning.Pairing;

/// <summary>One who may be given an embryo on the day.</summary>
/// <param name="Judged">As the recipients' list has her on that one day.</param>
/// <param name="Day">Her day: so many since her last heat, seen or timed.</param>
public sealed record Recipient(AnimalJudgement Judged, int Day)
{
    /// <summary>Her place in the herd.</summary>
    public int Animal => Judged.Animal;

    /// <summary>Her number on the farm.</summary>
    public string Number => Judged.Number;

    /// <summary>Whether nobody saw the heat: a method counts as one.</summary>
    public bool IsTimed { get; init; }

    /// <summary>What is to be found in the yards before anything is thawed for her: <c>ovary check</c>; empty where everything is met.</summary>
    public ImmutableArray<string> ToExamine { get; init; } = [];

    /// <summary>The method by which she was made ready; null where the book names none.</summary>
    public Method? Method { get; init; }

    /// <summary>Whether she is examined before anything is thawed for her.</summary>
    public bool IsExaminedFirst => !ToExamine.IsEmpty;
}

/// <summary>One whose heat fits the day, and who is given no embryo.</summary>
/// <param name="Number">Her number on the farm.</param>
/// <param name="Day">Her day.</param>
/// <param name="Why">Why not.</param>
/// <param name="Rules">The rules in the way, where it is those.</param>
public sealed record NotToday(string Number, int Day, NotTodayWhy Why, ImmutableArray<RuleJudgement> Rules);

/// <summary>Why one is not paired.</summary>
public enum NotTodayWhy
{
    /// <summary>Rules are in the way: not met, not known, or resting on days that nobody wrote down yet.</summary>
    Rules,

    /// <summary>The programme names her as a donor.</summary>
    Donor,

    /// <summary>She is booked for a later session.</summary>
    BookedForLater,

    /// <summary>Whoever drew the sheet left her out.</summary>
    LeftOut,
}
