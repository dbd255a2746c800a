using Byrelaw.Planning.LeadTimes;

namespace Byrelaw.Planning.Calendar;

/// <summary>All days of a programme.</summary>
/// <param name="Sessions">Each collection and its transfers.</param>
/// <param name="Treatments">Every method that may be used, for every session.</param>
/// <param name="Donors">The donors' calendar for every flush; empty for others.</param>
/// <param name="Tasks">What must be done by when.</param>
/// <param name="CleanTimes">Times in which nothing may happen.</param>
/// <param name="Calving">How the sessions stand to the season.</param>
/// <param name="VisitClashes">Days on which no team comes.</param>
/// <param name="Entries">All of it as entries, in order.</param>
public sealed record PlanCalendar(
    ImmutableArray<Session> Sessions, ImmutableArray<TreatmentCalendar> Treatments, ImmutableArray<TreatmentCalendar> Donors,
    ImmutableArray<TaskDates> Tasks, ImmutableArray<CleanTime> CleanTimes, CalvingSeason Calving, ImmutableArray<Clash> VisitClashes, ImmutableArray<PlanEntry> Entries)
{
    /// <summary>Draws it up.</summary>
    public static PlanCalendar Of(Season season)
    {
        ArgumentNullException.ThrowIfNull(season);
        var (programme, plans, sessions) = (season.Rulebook.Programme!, season.Rulebook.Plans, season.Sessions);
        var methods = programme.Aims.MethodsOf(plans);
        ImmutableArray<TreatmentCalendar> treatments = [.. sessions.SelectMany(session => methods.Select(method => TreatmentCalendar.Of(method, session)))];
        ImmutableArray<TreatmentCalendar> donors = [.. sessions.Select(session => TreatmentCalendar.OfDonors(plans, session)).OfType<TreatmentCalendar>()];
        var calendar = new PlanCalendar(
            sessions, treatments, donors, season.Tasks, CleanTime.Of(season.Rulebook), CalvingSeason.Of(plans, programme, sessions),
            [.. Clash.WithVisits(plans, sessions)], []);
        return calendar with { Entries = new PlanEntries(calendar, programme.Aims, season.Named).InOrder() };
    }
}
