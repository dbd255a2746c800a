namespace Byrelaw.Planning.Seasons;

/// <summary>Finds what a season does without a price.</summary>
internal static class WithoutPrice
{
    /// <summary>All that the sessions do without a price.</summary>
    /// <param name="inputs">Prices, and the numbers that are known beforehand.</param>
    /// <param name="sessions">As planned.</param>
    public static ImmutableArray<NotPriced> Of(SeasonInputs inputs, ImmutableArray<SessionSize> sessions)
    {
        var plans = inputs.Plans;
        var treated = sessions.SelectMany(session => session.Treated).Where(one => one.Animals > 0).Select(one => one.Method.Name)
            .Concat(inputs.Aims.DonorMethod is { } donors ? [donors] : []).Distinct().Select(plans.Method).OfType<Method>();
        return
        [
            .. from method in treated where !method.IsNatural && plans.CostOf(method) is null select new NotPriced(CostUnit.AnimalTreated, method.Name),
            .. inputs.Samples > 0 && plans.Cost(CostUnit.Sample) is null ? [new NotPriced(CostUnit.Sample)] : Array.Empty<NotPriced>(),
            .. Charges.Keep(plans) is null && (plans.Cost(CostUnit.DayOfKeep) is not null || plans.Assume(AssumedQuantity.DaysOfKeepPerRecipient) is not null)
                ? [new NotPriced(CostUnit.DayOfKeep)] : Array.Empty<NotPriced>(),
            .. Making(inputs),
            .. IsAllIn(plans) ? [] : Without(plans, CostUnit.Transfer, CostUnit.Visit),
        ];
    }

    /// <summary>What it takes to have embryos, without a price.</summary>
    public static IEnumerable<NotPriced> Making(SeasonInputs inputs) => IsAllIn(inputs.Plans) ? [] : inputs.Aims.Embryos switch
    {
        EmbryoOrigin.Frozen => Without(inputs.Plans, CostUnit.Embryo),
        EmbryoOrigin.Flushed => Without(inputs.Plans, CostUnit.Collection),
        _ => Without(inputs.Plans, CostUnit.Collection, CostUnit.Embryo),
    };

    private static bool IsAllIn(PlanStatements plans) => plans.Cost(CostUnit.EmbryoTransferred) is not null;

    private static IEnumerable<NotPriced> Without(PlanStatements plans, params CostUnit[] units) =>
        units.Where(per => plans.Cost(per) is null).Select(per => new NotPriced(per));
}
