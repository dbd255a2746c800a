namespace Byrelaw.Planning.Calendar;

/// <summary>When the calves of a session are due.</summary>
/// <param name="In">Cows or heifers as recipients.</param>
/// <param name="From">Due date after the first transfer day, by mean gestation.</param>
/// <param name="To">Due date after the last.</param>
/// <param name="Gestation">Mean days from heat to calving; a cross stands between its breeds.</param>
/// <param name="Spread">Standard deviation in days; null where none is assumed.</param>
/// <param name="Assumed">The lines it rests on.</param>
public sealed record CalvingDates(Carrier In, LocalDate From, LocalDate To, double Gestation, double? Spread, ImmutableArray<Assumption> Assumed)
{
    /// <summary>Nineteen calvings in twenty lie within so many standard deviations.</summary>
    private const double NineteenInTwenty = 1.96;

    /// <summary>Before this day about one calf in forty comes.</summary>
    public LocalDate Earliest => From.PlusDays(-(int)Math.Round(NineteenInTwenty * (Spread ?? 0)));

    /// <summary>After this day about one calf in forty comes.</summary>
    public LocalDate Latest => To.PlusDays((int)Math.Round(NineteenInTwenty * (Spread ?? 0)));

    /// <summary>
    /// A due date: transfer + gestation of the embryo's breed - the embryo's age, to the nearest day. Gestation goes mainly by the calf's own
    /// genes, so by the embryo's breed (heritability by service sire 33 to 47%: United States Department of Agriculture, Norman and others 2009).
    /// </summary>
    public static LocalDate Due(LocalDate transfer, double gestation, int embryoAge) =>
        transfer.PlusDays((int)Math.Round(gestation, MidpointRounding.AwayFromZero) - embryoAge);

    /// <summary>Due dates in cows and in heifers; null where the plan assumes no gestation.</summary>
    public static CalvingDates? Of(PlanStatements plans, Session session, Carrier animals)
    {
        ArgumentNullException.ThrowIfNull(plans);
        ArgumentNullException.ThrowIfNull(session);
        var breeds = session.Programme.Aims.CalfBreeds;
        var found = breeds.IsEmpty
            ? [plans.Assume(AssumedQuantity.Gestation, animals: animals)]
            : breeds.Select(breed => plans.Assume(AssumedQuantity.Gestation, animals: animals, breed: breed)).ToArray();
        if (found.Length == 0 || found.Contains(null))
        {
            return null;
        }

        var mean = found.Average(one => one!.Mean!.Value);
        var spread = found.Max(one => one!.Spread);
        return new(
            animals,
            Due(session.FirstTransfer, mean, session.EmbryoAge(session.FirstTransfer)),
            Due(session.FinalTransfer, mean, session.EmbryoAge(session.FinalTransfer)),
            mean, spread, [.. found.OfType<Assumption>().Distinct()]);
    }
}
