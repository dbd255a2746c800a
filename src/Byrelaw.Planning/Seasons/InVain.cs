namespace Byrelaw.Planning.Seasons;

/// <summary>What an idle recipient and a surplus embryo have cost, by the programme's prices.</summary>
/// <param name="Idle">The treatment and keep of all the animals that it takes to have one accepted.</param>
/// <param name="Surplus">Its share of the collection and its own making, less what freezing saves.</param>
/// <param name="ByMoney">Whether the prices say it; where they say neither, one counts as much as the other.</param>
public sealed record InVain(double Idle, double Surplus, bool ByMoney)
{
    /// <summary>Works it out.</summary>
    internal static InVain Of(SeasonInputs inputs, Chain chain, Option option)
    {
        var plans = inputs.Plans;
        var keep = plans.Method(option.Chain.Method) is { IsNatural: false } ? Price(CostUnit.DayOfKeep) * (plans.Assume(AssumedQuantity.DaysOfKeepPerRecipient)?.Mean ?? 0) : 0;
        var used = option.Preparing.Used.Share;
        var idle = used > 0 ? ((option.Cost ?? 0) + keep) / used : 0;
        var made = Price(CostUnit.Embryo) + (chain.Source.EmbryosPerTime > 0 ? Price(CostUnit.Collection) / chain.Source.EmbryosPerTime : 0);

        // An all-in price pays for no embryo that is left over; but another one transferred in its place would cost that price.
        var surplus = made > 0 ? made : Price(CostUnit.EmbryoTransferred);
        if (FitToFreeze(inputs) is { } fit)
        {
            surplus = Balance.Frozen(surplus, fit.Share, Price(CostUnit.EmbryoFrozen), Calves(EmbryoState.Frozen) / Calves(EmbryoState.Fresh) ?? 1);
        }

        return idle + surplus > 0 ? new(idle, surplus, true) : new(1, 1, false);

        double Price(CostUnit per) => plans.Cost(per)?.Amount.Amount ?? 0;

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
