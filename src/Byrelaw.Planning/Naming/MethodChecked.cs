using Byrelaw.Planning.FindingOut;

namespace Byrelaw.Planning.Naming;

/// <summary>One method in one session, and how each animal of the herd stands to it.</summary>
/// <param name="Days">Its days.</param>
/// <param name="Day">The day on which it is asked whether she may be treated: day 0. Of natural heat, on which nothing is given, the first day not past whose heat serves.</param>
/// <param name="Animals">By place in the herd.</param>
public sealed record MethodChecked(TreatmentCalendar Days, LocalDate Day, ImmutableArray<StandingOf> Animals)
{
    /// <summary>The method.</summary>
    public Method Method => Days.Method;

    /// <summary>How many stand so.</summary>
    public int Count(Standing standing) => Animals.Count(animal => animal.Standing == standing);

    /// <summary>Asks all that must hold of every animal: whether it can start, that she may carry, that she may be treated, that it suits her.</summary>
    /// <param name="session">The session.</param>
    /// <param name="method">A method for recipients.</param>
    /// <param name="today">The day of planning.</param>
    public static MethodChecked Of(JudgedSession session, Method method, LocalDate today)
    {
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(method);
        var days = TreatmentCalendar.Of(method, session.Days);
        var heats = days.Heats.Select(heat => heat.Date).Where(days.Window.Serves).ToList();
        var day = method.IsNatural ? heats.FirstOrDefault(heat => heat >= today, today) : days.Start;
        var bar = Bar(session, method, heats, day, today);
        var animals = new StandingOf[session.Judge.Herd.Count];
        Array.Fill(animals, new StandingOf(Standing.Out, bar == FailedCheck.None ? FailedCheck.Carrying : bar));
        if (bar == FailedCheck.None && session.Recipients is { } recipients)
        {
            foreach (var (animal, standing) in new Asking(session, GatesOf(session, method, day), today).Of(recipients.Animals))
            {
                animals[animal] = standing;
            }
        }

        return new(days, day, [.. animals]);
    }

    /// <summary>What bars everybody; <see cref="FailedCheck.None"/> for nothing.</summary>
    private static FailedCheck Bar(JudgedSession session, Method method, List<LocalDate> heats, LocalDate day, LocalDate today) =>
        session.IsStopped ? FailedCheck.Stopped
        : heats.Count == 0 ? FailedCheck.NoHeatServes
        : (method.IsNatural ? heats[^1] : day) < today ? FailedCheck.TooLate
        : !method.IsNatural && ProgrammeLists.Treatment(session.Programme) is null ? FailedCheck.NoListForTreatment : FailedCheck.None;

    /// <summary>What must hold of whoever is made ready by a method: she may carry on the days of transfer and, where something is given, be treated on day 0.</summary>
    internal static Gates GatesOf(JudgedSession session, Method method, LocalDate day)
    {
        var carrying = ProgrammeLists.Recipients(session.Programme)!;
        var treatment = method.IsNatural ? null : ProgrammeLists.Treatment(session.Programme);

        // What is given is found out about by day 0; where nothing is given there is time until the first transfer.
        return new Gates(
            [new GateDays(carrying, carrying.JudgedFrom, carrying.JudgedTo), .. treatment is null ? ImmutableArray<GateDays>.Empty : [new GateDays(treatment, day, day)]],
            method.Suits, day, method.IsNatural ? session.Days.FirstTransfer : day);
    }
}
