namespace Byrelaw.Planning;

/// <summary>Plans a programme.</summary>
public static class Planner
{
    /// <summary>Chooses the visit where that is left to the plan, judges the lists, draws up the calendar and works out the numbers.</summary>
    /// <param name="rulebook">With a programme, read without errors.</param>
    /// <param name="herd">Its records.</param>
    /// <param name="today">The day of planning; null for the day that the records reach.</param>
    /// <param name="knownOn">As known on this day; null for today's knowledge.</param>
    public static Plan Plan(Rulebook rulebook, Herd herd, LocalDate? today = null, LocalDate? knownOn = null)
    {
        ArgumentNullException.ThrowIfNull(rulebook);
        ArgumentNullException.ThrowIfNull(herd);
        var day = today ?? herd.KnownDay;
        var visits = VisitComparison.Of(rulebook, herd, day, new SeasonOutlooks());
        rulebook = visits?.Best?.Rulebook ?? rulebook;
        var draft = new Judge(rulebook, herd, knownOn).JudgeAll();
        var sessions = Namer.Name(draft, day);
        var calendar = PlanCalendar.Of(rulebook, draft.Lists, day, sessions);
        var inputs = JudgedSeason.Inputs(rulebook, choice => ListStanding.Of(ProgrammeLists.Judged(draft.Lists, choice)!), calendar) with
        {
            Named = SessionsByName.Of(sessions, ifAllPass: false),
            IfAllPass = SessionsByName.Of(sessions, ifAllPass: true),
        };
        return new Plan(draft, day, calendar, inputs, SeasonPlanner.Plan(inputs), ReadyByDate.Of(draft), visits) { Sessions = sessions };
    }
}
