namespace Byrelaw.Planning.Seasons;

/// <summary>Takes what a season's numbers need from a programme whose lists have been judged.</summary>
public static class JudgedSeason
{
    /// <summary>The inputs.</summary>
    /// <param name="rulebook">With a programme.</param>
    /// <param name="lists">Its lists, judged.</param>
    /// <param name="calendar">Its days.</param>
    /// <param name="herd">The records.</param>
    public static SeasonInputs Inputs(Rulebook rulebook, ImmutableArray<ListJudgement> lists, PlanCalendar calendar, Herd herd)
    {
        ArgumentNullException.ThrowIfNull(rulebook);
        ArgumentNullException.ThrowIfNull(calendar);
        ArgumentNullException.ThrowIfNull(herd);
        var programme = rulebook.Programme!;
        var aims = programme.Aims;
        var recipients = ProgrammeLists.Judged(lists, ProgrammeLists.Recipients(programme));
        var sessions = Math.Max(calendar.Rounds.Length, 1);
        var (donors, most) = aims.Embryos == EmbryoOrigin.Frozen ? (aims.InTheTank / sessions, aims.InTheTank) : Donors(ProgrammeLists.Judged(lists, ProgrammeLists.Donors(programme)));
        return new SeasonInputs
        {
            Plans = rulebook.Plans,
            Aims = aims,
            Donors = donors,
            MostDonors = most,
            Sessions = sessions,
            MostSessions = Math.Max(sessions, VisitsToCome(rulebook, calendar)),
            Serving = [.. calendar.Treatments.Where(treatment => treatment.Round == 1).Select(Serving)],
            OnHand = recipients is null ? new(0, 0, 0, 0) : WithThoseAskedAbout(OnHand.Of(recipients)),
            Heifers = recipients is null ? 0 : Heifers(recipients, herd),
            Visits = calendar.Rounds.Sum(round => round.Collection is null ? 1 : 2),
            Samples = calendar.Tasks.Where(task => task.Task is { ResultsTake: not null, Cost: null } && !task.IsDone).Sum(task => task.Animals.Length),
            Tasks = [.. calendar.Tasks.Where(task => task.Task.Cost is not null && !task.IsDone).Select(task => new TaskAnimals(task.Task, task.Animals.Length))],
        };
    }

    /// <summary>Donors that may be collected, those asked about among them, and all that are named.</summary>
    private static (int Planned, int Most) Donors(ListJudgement? list) => list is not null
        ? (list.Count(Answer.Ready) + list.Count(Answer.OnCourse) + list.Count(Answer.Ask), list.Animals.Length)
        : (0, 0);

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

    /// <summary>The days of a method on which a heat serves a transfer.</summary>
    internal static ServingDays Serving(TreatmentCalendar treatment) => new(treatment.Method.Name, treatment switch
    {
        { Method.IsNatural: true } => [.. Enumerable.Range(0, treatment.Heats.Length)],
        { Method.InHeat.Days: { IsEmpty: false } days } => [.. days.Select(day => day.Day).Where(treatment.Serves)],
        { Method.HeatDay: { } day } when treatment.Serves(day) => [day],
        _ => [],
    });

    /// <summary>How much of those who may be used are heifers.</summary>
    private static double Heifers(ListJudgement list, Herd herd)
    {
        var used = list.Animals.Where(animal => animal.Answer is Answer.Ready or Answer.OnCourse).ToArray();
        return used.Length == 0 ? 0 : (double)used.Count(animal => IsHeifer(herd, animal.Animal)) / used.Length;
    }

    private static bool IsHeifer(Herd herd, int animal)
    {
        var calvings = herd.Vocabulary.Calving is { } calving ? herd.Runs[calving.Id] : null;
        var calved = calvings is not null && calvings.Starts[animal + 1] > calvings.Starts[animal];
        return !calved && herd.RecordedParity[animal] <= 0;
    }
}
