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

    /// <summary>Animals that may be treated or watched at one session, those asked about among them: a plan is made to have things found out in time.</summary>
    public required int Animals { get; init; }

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

    /// <summary>What a season's numbers need of it.</summary>
    /// <param name="season">The season.</param>
    /// <param name="calendar">Its days.</param>
    public static SeasonInputs Of(Season season, PlanCalendar calendar)
    {
        ArgumentNullException.ThrowIfNull(season);
        ArgumentNullException.ThrowIfNull(calendar);
        var (aims, plans, named) = (season.Rulebook.Programme!.Aims, season.Rulebook.Plans, season.Named);
        var sessions = Math.Max(season.Sessions.Length, 1);
        var (donors, most) = aims.Embryos == EmbryoOrigin.Frozen ? (aims.InTheTank / sessions, aims.InTheTank) : (season.Donors?.Counted ?? 0, season.Donors?.Animals.Length ?? 0);
        return new SeasonInputs
        {
            Plans = plans,
            Aims = aims,
            Donors = donors,
            MostDonors = most,
            Sessions = sessions,
            MostSessions = Math.Max(sessions, VisitsToCome(season, calendar)),
            Uses = [.. calendar.Treatments.Where(treatment => treatment.Session == season.Sessions[0].Number).Select(treatment => UseChain.Of(treatment.Method, treatment, plans))],
            Animals = season.Recipients?.Counted ?? 0,
            Carriers = season.Recipients is { } recipients ? CarrierShares.Of(recipients) : CarrierShares.Exactly(0),
            Visits = season.Sessions.Sum(session => session.Collection is null ? 1 : 2),
            Samples = season.Tasks.Where(task => task.Task is { ResultsTake: not null, Cost: null } && !task.IsDone).Sum(task => task.Animals.Length),
            Tasks = [.. season.Tasks.Where(task => task.Task.Cost is not null && !task.IsDone).Select(task => new TaskAnimals(task.Task, task.Animals.Length))],
            Named = SessionsByName.Of(named, ifAllPass: false),
            IfAllPass = SessionsByName.Of(named, ifAllPass: true),
            IfUsable = usable => SessionsByName.Of(named, ifAllPass: true, usable),
            Own = named.IsEmpty ? [] : SessionsByName.Donors(named[0].Session, named[0].DonorsToAsk.Select(donor => donor.Animal)).Own,
        };
    }

    /// <summary>Sessions that the declared visits still allow, from the first collection to the end of the season.</summary>
    private static int VisitsToCome(Season season, PlanCalendar calendar)
    {
        if (season.Sessions is not [{ Collection: { } first }, ..])
        {
            return season.Sessions.Length;
        }

        var aims = season.Rulebook.Programme!.Aims;
        var calving = calendar.Calving.Sessions[0];
        var last = calving.LastTransferInTime is { } inTime ? inTime.PlusDays(-Period.DaysBetween(first, calving.Session.FinalTransfer)) : LocalDate.MaxIsoValue;
        return VisitDays.Of(season.Rulebook.Plans.Visits, "collection", aims.Region, aims.Holidays).Count(day => day >= first && day <= last);
    }
}

/// <summary>A task and how many animals it is for.</summary>
public sealed record TaskAnimals(PlanTask Task, int Animals);
