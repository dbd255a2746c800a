namespace Byrelaw.Planning.Calendar;

/// <summary>What is wrong with a day.</summary>
public enum ClashKind
{
    /// <summary>It is a Saturday or a Sunday.</summary>
    Weekend,

    /// <summary>It is a public holiday.</summary>
    Holiday,

    /// <summary>Visits of that name are declared, and none is on that day.</summary>
    NoVisit,
}

/// <summary>A day on which something is planned that does not go well with it.</summary>
/// <param name="Date">The day.</param>
/// <param name="Kind">What is wrong.</param>
/// <param name="Holiday">The holiday's name; null for the others.</param>
/// <param name="Visits">The visits' name; null for the others.</param>
public sealed record Clash(LocalDate Date, ClashKind Kind, string? Holiday = null, string? Visits = null)
{
    /// <summary>What is wrong with a day on which something is done.</summary>
    public static IEnumerable<Clash> On(LocalDate day, Aims aims)
    {
        ArgumentNullException.ThrowIfNull(aims);
        if (day.DayOfWeek is IsoDayOfWeek.Saturday or IsoDayOfWeek.Sunday)
        {
            yield return new(day, ClashKind.Weekend);
        }

        foreach (var holiday in aims.Holidays.Where(holiday => holiday.Date == day))
        {
            yield return new(day, ClashKind.Holiday, Holiday: holiday.Name);
        }
    }

    /// <summary>Days of collection and transfer on which no team comes; none where visits of that name are not declared.</summary>
    public static IEnumerable<Clash> WithVisits(PlanStatements plans, ImmutableArray<Session> sessions) => sessions.SelectMany(session =>
        NoVisit(plans, session.Programme, "collection", session.Collection is { } day ? [day] : []).Concat(NoVisit(plans, session.Programme, "transfer", session.TransferDays)));

    // A team that stays over several days is visited on the first of them.
    private static IEnumerable<Clash> NoVisit(PlanStatements plans, Programme programme, string name, IEnumerable<LocalDate> days)
    {
        var aims = programme.Aims;
        if (!VisitDays.Named(plans.Visits, name, aims.Region).Any())
        {
            return [];
        }

        var visits = VisitDays.Of(plans.Visits, name, aims.Region, aims.Holidays);
        return days.Take(1).Where(day => !visits.Contains(day)).Select(day => new Clash(day, ClashKind.NoVisit, Visits: name));
    }
}
