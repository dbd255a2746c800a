namespace Byrelaw.Planning.Seasons;

/// <summary>The chain of rates that a programme's assumptions make.</summary>
/// <param name="Chain">As far as the assumptions go; null where they do not even say how many embryos come.</param>
/// <param name="Used">The assumptions it was made from, in its order.</param>
/// <param name="Missing">What would have to be assumed to go on to the last stage, in its order.</param>
public sealed record ChainReading(Chain? Chain, ImmutableArray<Assumption> Used, ImmutableArray<AssumedQuantity> Missing)
{
    /// <summary>What would have to be assumed to count the straws in the tank; empty where they are counted, or there are none.</summary>
    public ImmutableArray<AssumedQuantity> MissingOfTank { get; init; } = [];

    /// <summary>Reads the chain. No rate is ever made up: where one is missing the chain ends, and what is missing is told.</summary>
    /// <param name="plans">The assumptions.</param>
    /// <param name="aims">Fresh or frozen, sexed or not, and what is wanted.</param>
    /// <param name="carriers">How much of the recipients are of which sort.</param>
    public static ChainReading Of(PlanStatements plans, Aims aims, CarrierShares carriers) => new ChainReader(plans, aims, carriers).Read();
}
