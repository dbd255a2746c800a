namespace Byrelaw.Planning.Calendar;

/// <summary>A method put on the calendar for one session, worked back from the transfer days (for donors: from the flush).</summary>
/// <param name="Method">The method.</param>
/// <param name="Session">The session's number.</param>
/// <param name="Start">Day 0; for natural heat the first day of watching. Where no heat serves it is only where the days would be: nobody is named then.</param>
/// <param name="Days">What is done when; none for natural heat.</param>
/// <param name="Heats">Dates on which heats are expected, with the share of all heats on each; for natural heat every date that serves, share null.</param>
/// <param name="Window">Which heats serve.</param>
public sealed record TreatmentCalendar(
    Method Method, int Session, LocalDate Start, ImmutableArray<TreatmentDay> Days, ImmutableArray<ExpectedHeat> Heats, HeatWindow Window)
{
    /// <summary>Of all heats, the share that falls on a day which serves; for natural heat the number of days that serve over the days of a cycle.</summary>
    public double InWindow => Method.CycleDays is { } cycle
        ? Math.Min(1, (double)Heats.Length / cycle)
        : Heats.Where(heat => Window.Serves(heat.Date)).Sum(heat => heat.Share ?? 0);

    /// <summary>Whether a heat on a day of the method serves a transfer.</summary>
    public bool Serves(int day) => Window.Serves(Start.PlusDays(day));

    /// <summary>Dates on which the method may start again for those not seen in heat; null where there is no second chance.</summary>
    public (LocalDate From, LocalDate To)? Again => Method.Again is { } again ? (Start.PlusDays(again.From), Start.PlusDays(again.To)) : null;

    /// <summary>Works a method for recipients back from a session's transfer days.</summary>
    public static TreatmentCalendar Of(Method method, Session session)
    {
        ArgumentNullException.ThrowIfNull(method);
        ArgumentNullException.ThrowIfNull(session);
        var window = session.Window;
        if (method.IsNatural)
        {
            return new(method, session.Number, window.First ?? window.Earliest, [], [.. window.Heats.Select(heat => new ExpectedHeat(heat, null))], window);
        }

        var start = window.StartOf(method);
        return new(method, session.Number, start, On(method, start), [.. HeatWindow.HeatsBy(method).Select(heat => new ExpectedHeat(start.PlusDays(heat.Day), heat.Share))], window);
    }

    /// <summary>The same of one who begins on a day of her own.</summary>
    public TreatmentCalendar StartingOn(LocalDate start)
    {
        var later = Period.DaysBetween(Start, start);
        return later == 0 ? this : this with
        {
            Start = start,
            Days = [.. Days.Select(day => day with { Date = day.Date.PlusDays(later) })],
            Heats = [.. Heats.Select(heat => heat with { Date = heat.Date.PlusDays(later) })],
        };
    }

    /// <summary>The donors' own calendar of a session; null where they are given nothing.</summary>
    public static TreatmentCalendar? OfDonors(PlanStatements plans, Session session)
    {
        ArgumentNullException.ThrowIfNull(plans);
        ArgumentNullException.ThrowIfNull(session);
        return session is { Collection: not null, Programme.Aims: { Embryos: EmbryoOrigin.Flushed, DonorMethod: { } name } } && plans.Method(name) is { } method ? ForDonors(method, session) : null;
    }

    /// <summary>Works a method for donors back from the day of a flush.</summary>
    public static TreatmentCalendar ForDonors(Method method, Session session)
    {
        ArgumentNullException.ThrowIfNull(method);
        ArgumentNullException.ThrowIfNull(session);
        var flush = session.Collection!.Value;
        var start = flush.PlusDays(-(method.FlushDay ?? 0));
        var heat = start.PlusDays(method.HeatDay ?? 0);
        var after = Period.DaysBetween(heat, flush);
        return new(method, session.Number, start, On(method, start), [new(heat, 1)], new([flush], after, after));
    }

    private static ImmutableArray<TreatmentDay> On(Method method, LocalDate start) => [.. method.Steps.Select((step, i) => new TreatmentDay(start.PlusDays(step.Day), step, i))];
}

/// <summary>One treatment on its date.</summary>
/// <param name="Date">The day.</param>
/// <param name="Step">What is done, with its cautions, part of the day and hours since an earlier step.</param>
/// <param name="Place">Its place among the method's steps, from 0.</param>
public sealed record TreatmentDay(LocalDate Date, MethodStep Step, int Place);

/// <summary>A date on which animals come in heat.</summary>
/// <param name="Date">The day.</param>
/// <param name="Share">Of all heats of the method; null for natural heat, where each day is as likely.</param>
public sealed record ExpectedHeat(LocalDate Date, double? Share);
