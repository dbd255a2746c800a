namespace Byrelaw.Planning;

/// <summary>One programme, planned: when, what by when, how many, what will come of it, what it costs.</summary>
/// <param name="Draft">The lists, judged on the days of the first session.</param>
/// <param name="Season">Its sessions, with who is named, and its tasks.</param>
/// <param name="Calendar">All days.</param>
/// <param name="Inputs">What the numbers are worked out from.</param>
/// <param name="Numbers">How many animals, what comes of it, what it costs.</param>
/// <param name="ReadyByDate">How many recipients would be ready on each day.</param>
/// <param name="Visits">The visits that the first collection could be on, where the programme leaves that to the plan; it is planned on the best.</param>
public sealed record Plan(
    Draft Draft, Season Season, PlanCalendar Calendar, SeasonInputs Inputs, SeasonNumbers Numbers, ReadyByDate? ReadyByDate, VisitComparison? Visits)
{
    /// <summary>The day of planning: dates before it are past.</summary>
    public LocalDate Today => Season.Today;

    /// <summary>Who is made ready for which session, of those that are not over; none where no list of recipients is drawn up.</summary>
    public ImmutableArray<NamedSession> Sessions => Season.Named;

    /// <summary>What people quote, held against it.</summary>
    public ImmutableArray<YardstickHeld> Yardsticks { get; init; } = [];

    /// <summary>What its forecast depends on most, the largest first.</summary>
    public ImmutableArray<Matter> WhatMatters { get; init; } = [];

    /// <summary>Every method that can still start, chosen or not, side by side; none where nobody is named.</summary>
    public ImmutableArray<MethodBeside> SideBySide { get; init; } = [];

    /// <summary>Cows in milk, dry cows and heifers side by side; null where nobody is named.</summary>
    public WhoCarries? WhoCarries { get; init; }

    /// <summary>The recipients' list, judged; null where the programme draws up none.</summary>
    public ListJudgement? Recipients => ProgrammeLists.Judged(Draft.Lists, ProgrammeLists.Recipients(Draft.Rulebook.Programme!));
}
