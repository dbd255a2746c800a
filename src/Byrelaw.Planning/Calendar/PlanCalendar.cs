using Byrelaw.Planning.LeadTimes;

namespace Byrelaw.Planning.Calendar;

/// <summary>All days of a programme.</summary>
/// <param name="Rounds">Each collection and its transfers.</param>
/// <param name="Treatments">Every method that may be used, for every round.</param>
/// <param name="Donors">The donors' calendar for every flush; empty for others.</param>
/// <param name="Tasks">What must be done by when.</param>
/// <param name="CleanTimes">Times in which nothing may happen.</param>
/// <param name="Season">How the rounds stand to the season.</param>
/// <param name="VisitClashes">Days on which no team comes.</param>
/// <param name="Entries">All of it as entries, in order.</param>
public sealed record PlanCalendar(
    ImmutableArray<Round> Rounds, ImmutableArray<TreatmentCalendar> Treatments, ImmutableArray<TreatmentCalendar> Donors,
    ImmutableArray<TaskDates> Tasks, ImmutableArray<CleanTime> CleanTimes, Season Season, ImmutableArray<Clash> VisitClashes, ImmutableArray<PlanEntry> Entries)
{
    /// <summary>Draws it up.</summary>
    /// <param name="rulebook">With a programme, read without errors.</param>
    /// <param name="lists">The programme's lists, judged.</param>
    /// <param name="today">The day of planning.</param>
    /// <param name="sessions">The sessions with those who are named; none where nobody asks who they are.</param>
    public static PlanCalendar Of(Rulebook rulebook, ImmutableArray<ListJudgement> lists, LocalDate today, params ImmutableArray<NamedSession> sessions)
    {
        ArgumentNullException.ThrowIfNull(rulebook);
        var (programme, plans) = (rulebook.Programme!, rulebook.Plans);
        var rounds = Round.Of(programme);
        var methods = programme.Aims.MethodsOf(plans);
        ImmutableArray<TreatmentCalendar> treatments = [.. rounds.SelectMany(round => methods.Select(method => TreatmentCalendar.Of(method, round)))];
        ImmutableArray<TreatmentCalendar> donors = programme.Aims is { Embryos: EmbryoOrigin.Flushed, DonorMethod: { } name } && plans.Method(name) is { } method
            ? [.. rounds.Select(round => TreatmentCalendar.ForDonors(method, round))] : [];
        var calendar = new PlanCalendar(
            rounds, treatments, donors, TaskDates.Of(plans, programme, lists, today, sessions), CleanTime.Of(rulebook), Season.Of(plans, programme, rounds),
            [.. Clash.WithVisits(plans, rounds)], []);
        return calendar with { Entries = new PlanEntries(calendar, programme.Aims).InOrder() };
    }
}
