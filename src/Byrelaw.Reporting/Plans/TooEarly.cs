using Byrelaw.Planning.Naming;

namespace Byrelaw.Reporting.Plans;

/// <summary>
/// A plan drawn up so early that the book can say of nobody yet whether she may be used: its days hold, and every number of animals is 0 for want of records, not of animals.
/// </summary>
internal static class TooEarly
{
    /// <summary>Whether it is so: nobody is named or asked about as a recipient, no donor is counted or asked about, and the first treatment is still to come.</summary>
    public static bool Is(Plan plan) => !plan.Sessions.IsEmpty && plan.Sessions.All(HasNobody) && FirstTreatment(plan) is { } first && first > plan.Today;

    /// <summary>What the 0 of such a plan means; null for any other.</summary>
    public static string? Words(Plan plan) => !Is(plan) ? null
        : $"Nobody can be named yet, and no donor counted: on {Dates.Long(plan.Today)} the book does not say who will have calved, come in heat, been scanned and scored by {Dates.Long(FirstTreatment(plan)!.Value)}. "
            + "Where a 0 stands for animals, calves or a chance, read “not known yet”. The days hold: do what is due, and draw the plan up again as the records come in.";

    private static bool HasNobody(NamedSession session) => session is { Session.IsStopped: false, Named.IsEmpty: true, ToAsk.IsEmpty: true, DonorsToAsk.IsEmpty: true, BegunAndNotNamed.IsEmpty: true }
        && session.Session.Collected.IsEmpty;

    private static LocalDate? FirstTreatment(Plan plan) => plan.Sessions[0].Methods.Where(method => !method.Method.IsNatural).Select(method => (LocalDate?)method.Days.Start).Min();
}
