namespace Byrelaw.Planning.Carrying;

/// <summary>Cows in milk, dry cows and heifers of a herd, side by side.</summary>
/// <param name="Sorts">In this order.</param>
/// <param name="NotKnown">Of so many that are sure or to ask about it is not known which they are.</param>
/// <param name="Method">The method by which their cost is reckoned: of those that may be used the first that can still start; null where none can.</param>
public sealed record WhoCarries(ImmutableArray<CarrierBeside> Sorts, int NotKnown, string? Method)
{
    /// <summary>Works it out; null where nobody is named.</summary>
    /// <param name="inputs">The season's.</param>
    /// <param name="sessions">Those that are not over.</param>
    /// <param name="sideBySide">Every method that can still start.</param>
    internal static WhoCarries? Of(SeasonInputs inputs, ImmutableArray<NamedSession> sessions, ImmutableArray<MethodBeside> sideBySide)
    {
        ImmutableArray<NamedSession> open = [.. sessions.Where(session => !session.Session.IsStopped)];
        if (open.IsEmpty)
        {
            return null;
        }

        var herd = HerdBySort.Of(open);
        var method = open[0].Methods.Select(one => sideBySide.FirstOrDefault(beside => beside.Method.Name == one.Method.Name)).FirstOrDefault(one => one is not null);
        var bought = BoughtRecipients.Of(inputs, open);
        return new([.. Enum.GetValues<Carrier>().Select(Beside)], herd.NotKnown, method?.Method.Name);

        CarrierBeside Beside(Carrier carrier)
        {
            var (sure, asked) = herd.Of(carrier);
            var chain = ChainReading.Of(inputs.Plans, inputs.Aims, CarrierShares.All(carrier)).Chain;
            var embryo = EmbryoCost.Of(inputs.Plans, chain);
            var state = inputs.Aims.Embryos == EmbryoOrigin.Frozen ? EmbryoState.Frozen : EmbryoState.Fresh;
            return new(
                carrier, sure, asked, inputs.Plans.Assume(AssumedQuantity.PregnantPerTransfer, state, carrier, inputs.Aims.Semen != Semen.Unsexed),
                embryo.Each(chain, Stage.Alive, method?.CostPerAccepted), embryo.IsAtLeast, bought?.OfSort(carrier));
        }
    }
}
