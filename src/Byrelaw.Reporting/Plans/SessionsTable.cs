using Byrelaw.Planning.Naming;

namespace Byrelaw.Reporting.Plans;

/// <summary>All sessions in one table, for the page and for the terminal.</summary>
internal static class SessionsTable
{
    public static Table Of(Plan plan)
    {
        var table = new Table("Recipients of each session", "session", "transfers", "treated from", "wanted", "named", "to ask", "short", "spare", "donors");
        var early = TooEarly.Is(plan);
        foreach (var session in plan.Sessions)
        {
            table.Add(
                $"{session.Number}", Dates.Range(session.Session.Days.FirstTransfer, session.Session.Days.FinalTransfer), From(session, plan.Today.Year),
                session.Session.IsStopped ? "stopped" : early ? "not known yet" : session.Wanted is { } wanted ? $"{wanted}" : "not said", Wording.Bold($"{session.Named.Length}"), $"{session.ToAsk.Length}",
                !early && session.Short is { } missing ? $"{missing}" : "", $"{session.Spares.Length}", Donors(session));
        }

        return table;
    }

    /// <summary>The first day on which anybody named is treated; else that of the first method that can still start.</summary>
    private static string From(NamedSession session, int year) =>
        (session.Named.Select(animal => (LocalDate?)animal.Start).Min() ?? session.Methods.Where(CanStart).Select(method => (LocalDate?)method.Days.Start).Min()) is { } day ? Dates.Long(day, year) : session.Session.IsStopped ? "" : "no method can start any more";

    private static bool CanStart(MethodChecked method) => !method.Method.IsNatural && method.Animals.Any(animal => animal.Failed is not (FailedCheck.TooLate or FailedCheck.NoHeatServes or FailedCheck.Stopped));

    private static string Donors(NamedSession session) => session.Session.Donors is null ? ""
        : session.DonorsToAsk.Length > 0 ? $"{session.Session.Collected.Length}, and {session.DonorsToAsk.Length} to ask" : $"{session.Session.Collected.Length}";
}
