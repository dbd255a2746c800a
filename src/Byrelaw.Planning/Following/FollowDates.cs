namespace Byrelaw.Planning.Following;

/// <summary>
/// A recipient's own dates after a transfer. Day 0 of the pregnancy is the day of transfer less the embryo's age; an age that nobody knows counts as none, so that nothing comes too early. The windows are common practice, no
/// source, but for the second check (Edelhoff and others 2020, Journal of Dairy Science 103:11970).
/// </summary>
/// <param name="Transfer">The day of transfer.</param>
/// <param name="Age">The embryo's age on it, in days; null where nobody knows.</param>
public sealed record FollowDates(LocalDate Transfer, int? Age)
{
    private const int ByScan = 28;
    private const int ByHand = 42;
    private const int DryDays = 60;
    private const double NineteenInTwenty = 1.96;
    private const double Long = 1.64;

    /// <summary>Day 0 of the pregnancy.</summary>
    public LocalDate DayZero => Transfer.PlusDays(-(Age ?? 0));

    /// <summary>Days on which a heat says that she returned, and does not prove that she is empty.</summary>
    public DateInterval ReturnWatch => Days(17, 25);

    /// <summary>Days of the first check, not by hand.</summary>
    public DateInterval FirstCheck => Days(28, 35);

    /// <summary>Days of the second.</summary>
    public DateInterval SecondCheck => Days(59, 62);

    /// <summary>The first day on which an empty test clears her: by ultrasound, blood or milk.</summary>
    public LocalDate ClearedFrom => DayZero.PlusDays(ByScan);

    /// <summary>The same by hand.</summary>
    public LocalDate ClearedByHandFrom => Transfer.PlusDays(ByHand);

    /// <summary>Mean days from heat to calving, and its spread; null where the programme assumes none.</summary>
    public (double Mean, double Spread)? Gestation { get; init; }

    /// <summary>The day on which she is due; null without a gestation.</summary>
    public LocalDate? Due => Gestation is { } days ? CalvingDates.Due(Transfer, days.Mean, Age ?? 0) : null;

    /// <summary>Nineteen calvings in twenty lie within these days.</summary>
    public DateInterval? Calving => Due is { } due ? new DateInterval(due.PlusDays(-Spreads(NineteenInTwenty)), due.PlusDays(Spreads(NineteenInTwenty))) : null;

    /// <summary>The day on which she is dried off.</summary>
    public LocalDate? DryOff => Due?.PlusDays(-DryDays);

    /// <summary>From this day on she goes long: about one in twenty does.</summary>
    public LocalDate? LongFrom => Due?.PlusDays(Spreads(Long));

    private int Spreads(double count) => (int)Math.Round(count * (Gestation?.Spread ?? 0));

    private DateInterval Days(int from, int to) => new(DayZero.PlusDays(from), DayZero.PlusDays(to));
}
