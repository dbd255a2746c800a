namespace Byrelaw.Planning.Recipients;

/// <summary>What an embryo and its transfer cost, as far as they have prices.</summary>
/// <param name="Amount">Of those that have a price.</param>
/// <param name="IsAtLeast">Whether something has none.</param>
internal readonly record struct EmbryoCost(double Amount, bool IsAtLeast)
{
    /// <summary>One all-in price, else its share of a collection, its making and its transfer.</summary>
    /// <param name="plans">Prices.</param>
    /// <param name="chain">How embryos come; null where that is not known.</param>
    public static EmbryoCost Of(PlanStatements plans, Chain? chain)
    {
        if (Price(CostUnit.EmbryoTransferred) is { } all)
        {
            return new(all, false);
        }

        var isFrozen = chain?.Source.Kind == EmbryoSourceKind.Frozen;
        var collection = !isFrozen && chain is { Source.EmbryosPerTime: > 0 and var embryos } ? Price(CostUnit.Collection) / embryos : null;
        var (making, transfer) = (Price(CostUnit.Embryo), Price(CostUnit.Transfer));
        var isMissing = (!isFrozen && collection is null) || (chain?.Source.Kind != EmbryoSourceKind.Flushed && making is null) || transfer is null;
        return new((collection ?? 0) + (making ?? 0) + (transfer ?? 0), isMissing);

        double? Price(CostUnit per) => plans.Cost(per)?.Amount.Amount;
    }

    /// <summary>What one of what is counted at a stage costs: this, and the treatment and keep of all that it takes to have one recipient accepted, over the chance that a transfer comes so far.</summary>
    /// <returns>Null where the treatment has no price, or the chain does not go so far.</returns>
    public double? Each(Chain? chain, Stage stage, double? accepted) =>
        chain is not null && chain.AfterTransfer.Any(step => step.To == stage)
            && chain.AfterTransfer.TakeWhile(step => step.To <= stage).Aggregate(1.0, (left, step) => left * step.Rate.Share) is > 0 and var share
            ? (Amount + accepted) / share : null;
}
