namespace Byrelaw.Planning.Slipping;

/// <summary>What is left when something goes wrong.</summary>
/// <param name="Slip">What went wrong.</param>
/// <param name="Before">The session as planned.</param>
/// <param name="After">The session as it becomes; null where no embryos come.</param>
/// <param name="EmbryosOverAge">Whether embryos would be older than a recipient takes with good hope: more than 8 days on every day of transfer left.</param>
/// <param name="Treatments">What becomes of each method's animals.</param>
/// <param name="Clashes">What is wrong with the new days.</param>
/// <param name="Fallback">What can be done with animals that are left without an embryo.</param>
public sealed record SlipAnswer(
    Slip Slip, Session Before, Session? After, bool EmbryosOverAge, ImmutableArray<SlippedTreatment> Treatments, ImmutableArray<Clash> Clashes, Fallback Fallback);

/// <summary>What becomes of the animals of one method.</summary>
/// <param name="Before">As planned.</param>
/// <param name="NoReturn">The treatment after which heat comes when it comes; null for natural heat.</param>
/// <param name="State">How far they are on the day.</param>
/// <param name="After">Its days as they become, where treatments can still move; null where they cannot.</param>
/// <param name="ServedBefore">Of all heats, the share that served a transfer as planned; for natural heat, days that serve over days of a cycle.</param>
/// <param name="ServedAfter">The share that still does.</param>
public sealed record SlippedTreatment(
    TreatmentCalendar Before, TreatmentDay? NoReturn, SlipState State, TreatmentCalendar? After, double ServedBefore, double ServedAfter)
{
    /// <summary>Treatments already given on the day people learn of it.</summary>
    public ImmutableArray<TreatmentDay> Done(LocalDate on) => [.. Before.Days.Where(day => day.Date < on)];

    /// <summary>Of what served before, the share that is lost.</summary>
    public double Lost => ServedBefore > 0 ? Math.Max(0, 1 - (ServedAfter / ServedBefore)) : 0;
}

/// <summary>How far a method's animals are.</summary>
public enum SlipState
{
    /// <summary>Not started: everything moves, nothing is lost.</summary>
    NotStarted,

    /// <summary>Started, but the point of no return lies ahead: a vet says whether the rest may wait.</summary>
    MayWait,

    /// <summary>Past it: the heats come as planned.</summary>
    Set,
}

/// <summary>What can be done with animals that are left without an embryo.</summary>
/// <param name="FrozenEmbryos">Embryos in the tank, for the transfer days as planned.</param>
/// <param name="ServeFrom">First heat still to come at which they can be served; null where all are past.</param>
/// <param name="ServeTo">The last.</param>
/// <param name="NextHeatFrom">Their next heats after those, a cycle later, from.</param>
/// <param name="NextHeatTo">To.</param>
/// <param name="NextCollection">The next collection: the next session, or else the next visit; null for neither.</param>
public sealed record Fallback(
    int FrozenEmbryos, LocalDate? ServeFrom, LocalDate? ServeTo, LocalDate? NextHeatFrom, LocalDate? NextHeatTo, LocalDate? NextCollection);
