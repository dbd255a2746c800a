namespace Byrelaw.Planning.Seasons;

/// <summary>All that the numbers of one season are worked out from.</summary>
public sealed record SeasonInputs
{
    /// <summary>Methods, rates and prices.</summary>
    public required PlanStatements Plans { get; init; }

    /// <summary>What the programme wants, and how.</summary>
    public required Aims Aims { get; init; }

    /// <summary>Donors collected or flushed at each session; for frozen embryos, straws thawed at each.</summary>
    public required int Donors { get; init; }

    /// <summary>Those among them of whom the programme says more than of all.</summary>
    public ImmutableArray<OwnDonor> Own { get; init; } = [];

    /// <summary>Sessions planned.</summary>
    public int Sessions { get; init; } = 1;

    /// <summary>The most donors there are (for frozen embryos, straws in the tank); at least <see cref="Donors"/>.</summary>
    public int MostDonors { get; init; }

    /// <summary>The most sessions that the visits and the season allow; at least <see cref="Sessions"/>.</summary>
    public int MostSessions { get; init; } = 1;

    /// <summary>How animals come to be used by each method, on the days of the first session.</summary>
    public required ImmutableArray<UseChain> Uses { get; init; }

    /// <summary>Animals that may be treated or watched, at one session.</summary>
    public required OnHand OnHand { get; init; }

    /// <summary>How much of the recipients are of which sort.</summary>
    public CarrierShares Carriers { get; init; }

    /// <summary>The sessions with those named; null where nobody is named by name, and all sessions are taken to be alike.</summary>
    public SessionsByName? Named { get; init; }

    /// <summary>The same if all that is asked turned out well.</summary>
    public SessionsByName? IfAllPass { get; init; }

    /// <summary>The same for a share of those asked about that turns out to be usable.</summary>
    public Func<double, SessionsByName?>? IfUsable { get; init; }

    /// <summary>How often a team comes.</summary>
    public int Visits { get; init; }

    /// <summary>Samples to be paid for.</summary>
    public int Samples { get; init; }

    /// <summary>Tasks that cost something, with the animals they are for.</summary>
    public ImmutableArray<TaskAnimals> Tasks { get; init; } = [];
}

/// <summary>A task and how many animals it is for.</summary>
public sealed record TaskAnimals(PlanTask Task, int Animals);
