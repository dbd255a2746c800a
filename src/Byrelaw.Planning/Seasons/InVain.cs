namespace Byrelaw.Planning.Seasons;

/// <summary>What an idle recipient and a surplus embryo have cost, as far as the programme has prices for it. Where it has none for one of the two, money
/// cannot weigh them, and one counts as much as the other.</summary>
/// <param name="Idle">The treatment and keep of all the animals that it takes to have one accepted; null where neither has a price.</param>
/// <param name="Surplus">Its share of the collection and its own making, less what freezing saves; null where neither has a price.</param>
/// <param name="NotPriced">What these leave out, because it has no price.</param>
public sealed record InVain(double? Idle, double? Surplus, ImmutableArray<NotPriced> NotPriced)
{
    /// <summary>Whether the prices weigh one against the other.</summary>
    public bool ByMoney => Idle + Surplus > 0;

    /// <summary>What one idle recipient weighs against <see cref="SurplusWeight"/>.</summary>
    internal double IdleWeight => ByMoney ? Idle!.Value : 1;

    /// <summary>What one embryo left over weighs.</summary>
    internal double SurplusWeight => ByMoney ? Surplus!.Value : 1;

    /// <summary>Works it out.</summary>
    internal static InVain Of(SeasonInputs inputs, Chain chain, Option option)
    {
        var (plans, used) = (inputs.Plans, option.Preparing.Used.Share);
        var treatment = option.Cost;
        var keep = plans.Method(option.Chain.Method) is { IsNatural: false } ? Charges.Keep(plans) : null;
        var idle = Sum(treatment, keep) is { } each ? used > 0 ? each / used : 0 : (double?)null;
        var (collection, making) = (Price(CostUnit.Collection), Price(CostUnit.Embryo));

        // An all-in price pays for no embryo that is left over; but another one transferred in its place would cost that price.
        var surplus = Sum(chain.Source.EmbryosPerTime > 0 ? collection / chain.Source.EmbryosPerTime : null, making) ?? Price(CostUnit.EmbryoTransferred);
        if (surplus is { } cost && FitToFreeze(inputs) is { } fit && Price(CostUnit.EmbryoFrozen) is { } freezing)
        {
            surplus = Balance.Frozen(cost, fit.Share, freezing, Calves(EmbryoState.Frozen) / Calves(EmbryoState.Fresh) ?? 1);
        }

        return new(idle, surplus,
        [
            .. treatment is null ? [new NotPriced(CostUnit.AnimalTreated, option.Chain.Method)] : Array.Empty<NotPriced>(),
            .. WithoutPrice.Making(inputs),
        ]);

        double? Price(CostUnit per) => plans.Cost(per)?.Amount.Amount;

        static double? Sum(double? one, double? other) => one is null ? other : one + (other ?? 0);

        double? Calves(EmbryoState state) => plans.Assume(AssumedQuantity.PregnantPerTransfer, state)?.Share?.Value
            * (plans.Assume(AssumedQuantity.KeptFromFirstCheckToCalving, state)?.Share?.Value ?? 1)
            * (plans.Assume(AssumedQuantity.KeptFromFirstToSecondCheck, state)?.Share?.Value ?? 1)
            * (plans.Assume(AssumedQuantity.KeptFromSecondCheckToCalving, state)?.Share?.Value ?? 1);
    }

    /// <summary>
    /// The share of surplus embryos that is frozen; null where the programme has no price for freezing or does not say how many are fit for it,
    /// or where they come from the tank.
    /// </summary>
    internal static Rate? FitToFreeze(SeasonInputs inputs) =>
        inputs.Aims.Embryos == EmbryoOrigin.Frozen || inputs.Plans.Cost(CostUnit.EmbryoFrozen) is null
            ? null
            : inputs.Plans.Assume(AssumedQuantity.EmbryosFitToFreeze)?.Share?.ToRate();
}
