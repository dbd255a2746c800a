namespace Byrelaw.Planning.Calendar;

/// <summary>How the sessions stand to the farm's season.</summary>
/// <param name="PlannedStartOfMating">As the programme sets it; null for none.</param>
/// <param name="CalveBy">The last acceptable day of calving; null for none.</param>
/// <param name="Sessions">Each session's calving.</param>
/// <param name="LostCycle">What it means for a recipient that is not used, or does not hold, to go one cycle later.</param>
public sealed record CalvingSeason(LocalDate? PlannedStartOfMating, LocalDate? CalveBy, ImmutableArray<SessionCalving> Sessions, LostCycle? LostCycle)
{
    /// <summary>Works it out; sessions without an assumed gestation have no calving dates.</summary>
    public static CalvingSeason Of(PlanStatements plans, Programme programme, ImmutableArray<Session> sessions)
    {
        ArgumentNullException.ThrowIfNull(plans);
        ArgumentNullException.ThrowIfNull(programme);
        var calveBy = programme.Aims.CalveBy;
        var start = programme.Date("planned start of mating");
        var inSeason = sessions.Select(session => SessionCalving.Of(plans, session, calveBy, start)).ToImmutableArray();
        return new(start, calveBy, inSeason, inSeason.IsEmpty ? null : LostCycle.Of(plans, programme, inSeason[0]));
    }
}

/// <summary>One session's calving.</summary>
/// <param name="Session">The session.</param>
/// <param name="InCows">Due dates in cows; null where no gestation is assumed.</param>
/// <param name="InHeifers">Due dates in heifers.</param>
/// <param name="DaysTooLate">By how many days the last due date in cows is past the last acceptable one; 0 where it is not; null where that cannot be told.</param>
/// <param name="LastTransferInTime">The last day on which a transfer still calves in time; null where that cannot be told.</param>
/// <param name="DaysFromStartOfMating">From the planned start of mating to the heat that the first embryos stand for: below 0 they calve before the season's first; null without that date.</param>
public sealed record SessionCalving(
    Session Session, CalvingDates? InCows, CalvingDates? InHeifers, int? DaysTooLate, LocalDate? LastTransferInTime, int? DaysFromStartOfMating)
{
    /// <summary>Whether it calves after the last acceptable day: too late for this programme.</summary>
    public bool IsTooLate => DaysTooLate > 0;

    internal static SessionCalving Of(PlanStatements plans, Session session, LocalDate? calveBy, LocalDate? startOfMating)
    {
        var (cows, heifers) = (CalvingDates.Of(plans, session, Carrier.Cows), CalvingDates.Of(plans, session, Carrier.Heifers));
        int? late = cows is not null && calveBy is { } last ? Math.Max(0, Period.DaysBetween(last, cows.To)) : null;
        LocalDate? inTime = cows is not null && calveBy is { } by
            ? session.FinalTransfer.PlusDays(Period.DaysBetween(cows.To, by)) : null;
        int? fromStart = startOfMating is { } start
            ? Period.DaysBetween(start, session.FirstTransfer.PlusDays(-session.EmbryoAge(session.FirstTransfer))) : null;
        return new(session, cows, heifers, late, inTime, fromStart);
    }
}

/// <summary>What a lost cycle costs: she is served or tried again at her next heat and calves so much later.</summary>
/// <param name="Days">How much later she calves, at best.</param>
/// <param name="NextHeat">When the first recipients come in heat again.</param>
/// <param name="DueThen">When they calve if they hold to a service at that heat; null where no gestation is assumed.</param>
/// <param name="IsTooLateThen">Whether that is after the last acceptable day.</param>
/// <param name="Money">What it costs each, if the programme says.</param>
public sealed record LostCycle(int Days, LocalDate NextHeat, LocalDate? DueThen, bool IsTooLateThen, Money? Money)
{
    /// <summary>Days from one heat to the next, where no method says how long a cycle is: common teaching, 21 in cows.</summary>
    private const int Cycle = 21;

    internal static LostCycle Of(PlanStatements plans, Programme programme, SessionCalving first)
    {
        var days = plans.Methods.FirstOrDefault(method => method.IsNatural)?.CycleDays ?? Cycle;
        var session = first.Session;
        var next = session.FirstTransfer.PlusDays(days - session.EmbryoAge(session.FirstTransfer));
        LocalDate? due = first.InCows is { } cows ? CalvingDates.Due(next, cows.Gestation, 0) : null;
        return new(days, next, due, due > programme.Aims.CalveBy, plans.Cost(CostUnit.LostCycle)?.Amount);
    }
}
