namespace Byrelaw.Planning.Seasons;

/// <summary>Takes what a season's numbers need from a programme whose lists have been judged.</summary>
public static class JudgedSeason
{
    /// <summary>The inputs: for the plan and for every visit that is compared, made here and nowhere else.</summary>
    /// <param name="rulebook">With a programme.</param>
    /// <param name="standing">How the animals of a list stand.</param>
    /// <param name="calendar">Its days.</param>
    public static SeasonInputs Inputs(Rulebook rulebook, Func<Choice, ListStanding> standing, PlanCalendar calendar)
    {
        ArgumentNullException.ThrowIfNull(rulebook);
        ArgumentNullException.ThrowIfNull(standing);
        ArgumentNullException.ThrowIfNull(calendar);
        var programme = rulebook.Programme!;
        var aims = programme.Aims;
        var recipients = Recipients(programme, standing);
        var sessions = Math.Max(calendar.Rounds.Length, 1);
        var (donors, most) = aims.Embryos == EmbryoOrigin.Frozen ? (aims.InTheTank / sessions, aims.InTheTank) : Donors(Donors(programme, standing));
        return new SeasonInputs
        {
            Plans = rulebook.Plans,
            Aims = aims,
            Donors = donors,
            MostDonors = most,
            Sessions = sessions,
            MostSessions = Math.Max(sessions, VisitsToCome(rulebook, calendar)),
            Uses = [.. calendar.Treatments.Where(treatment => treatment.Round == calendar.Rounds[0].Number).Select(treatment => UseChain.Of(treatment.Method, treatment, rulebook.Plans))],
            OnHand = recipients is null ? new(0, 0, 0, 0) : WithThoseAskedAbout(OnHand.Of(recipients)),
            Carriers = recipients is null ? CarrierShares.Exactly(0) : CarrierShares.Of(recipients),
            Visits = calendar.Rounds.Sum(round => round.Collection is null ? 1 : 2),
            Samples = calendar.Tasks.Where(task => task.Task is { ResultsTake: not null, Cost: null } && !task.IsDone).Sum(task => task.Animals.Length),
            Tasks = [.. calendar.Tasks.Where(task => task.Task.Cost is not null && !task.IsDone).Select(task => new TaskAnimals(task.Task, task.Animals.Length))],
        };
    }

    /// <summary>The donors; null where the programme draws up no list of them.</summary>
    public static ListStanding? Donors(Programme programme, Func<Choice, ListStanding> standing)
    {
        ArgumentNullException.ThrowIfNull(standing);
        return ProgrammeLists.Donors(programme) is { } choice ? standing(choice) : null;
    }

    /// <summary>The recipients, each as she may be used on the transfer days and, where there is a list for it, treated; null where the programme draws up no list of them.</summary>
    public static ListStanding? Recipients(Programme programme, Func<Choice, ListStanding> standing)
    {
        ArgumentNullException.ThrowIfNull(standing);
        return ProgrammeLists.Recipients(programme) is not { } choice ? null
            : standing(choice).And(ProgrammeLists.Treatment(programme) is { } treatment ? standing(treatment) : null);
    }

    /// <summary>Donors that may be collected, those asked about among them, and all that are named.</summary>
    private static (int Planned, int Most) Donors(ListStanding? list) => list is null ? (0, 0) : (list.Animals.Count(animal => animal.IsCounted), list.Animals.Length);

    /// <summary>A plan is made to have things found out in time, so those who are asked about count as animals that may be used.</summary>
    private static OnHand WithThoseAskedAbout(OnHand hand) => new(hand.Ready, hand.OnCourse + hand.Asked, 0, hand.KeptForTheirStanding);

    /// <summary>Sessions that the declared visits still allow, from the first collection to the end of the season.</summary>
    private static int VisitsToCome(Rulebook rulebook, PlanCalendar calendar)
    {
        if (calendar.Rounds.IsEmpty || calendar.Rounds[0].Collection is not { } first)
        {
            return calendar.Rounds.Length;
        }

        var aims = rulebook.Programme!.Aims;
        var season = calendar.Season.Rounds[0];
        var last = season.LastTransferInTime is { } inTime ? inTime.PlusDays(-Period.DaysBetween(first, season.Round.FinalTransfer)) : LocalDate.MaxIsoValue;
        return VisitDays.Of(rulebook.Plans.Visits, "collection", aims.Region, aims.Holidays).Count(day => day >= first && day <= last);
    }
}
