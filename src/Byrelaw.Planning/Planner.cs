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
        var visits = VisitComparison.Of(rulebook, herd, day);
        rulebook = On(visits, rulebook);
        var draft = new Judge(rulebook, herd, knownOn).JudgeAll();
        var season = Season.Of(draft, day);
        var calendar = PlanCalendar.Of(season);
        var inputs = SeasonInputs.Of(season, calendar);
        var numbers = SeasonPlanner.Plan(inputs);
        var sideBySide = MethodBeside.Of(rulebook.Plans, season.Named, numbers.Reading.Chain, day);
        return new Plan(draft, season, calendar, inputs, numbers, ReadyByDate.Of(draft), visits)
        {
            Yardsticks = YardsticksHeld.Of(rulebook.Plans, season.Sessions, numbers),
            WhatMatters = Mattering.WhatMatters.Of(inputs, numbers, season.Sessions),
            SideBySide = sideBySide,
            WhoCarries = WhoCarries.Of(inputs, season.Named, sideBySide),
        };
    }

    /// <summary>Only the days, on the visit that <see cref="Plan"/> would choose: nobody is judged for them beyond that choice, so no task knows whom it is for.</summary>
    /// <param name="rulebook">With a programme, read without errors.</param>
    /// <param name="herd">Its records.</param>
    /// <param name="today">The day of planning; null for the day that the records reach.</param>
    /// <returns>The rulebook with its programme on these days, and the calendar.</returns>
    public static (Rulebook Rulebook, PlanCalendar Calendar) Days(Rulebook rulebook, Herd herd, LocalDate? today = null)
    {
        ArgumentNullException.ThrowIfNull(rulebook);
        ArgumentNullException.ThrowIfNull(herd);
        var day = today ?? herd.KnownDay;
        var moved = On(VisitComparison.Of(rulebook, herd, day), rulebook);
        return (moved, PlanCalendar.Of(Season.OfDays(moved, day)));
    }

    private static Rulebook On(VisitComparison? visits, Rulebook rulebook) => visits?.Best?.Rulebook ?? rulebook;
}
