namespace Byrelaw.Planning.Recipients;

/// <summary>A method that may be used.</summary>
/// <param name="Chain">How animals treated by it come to be used.</param>
/// <param name="Cost">Per animal treated or watched; null where nothing is said.</param>
public sealed record Option(UseChain Chain, double? Cost)
{
    /// <summary>The method as a forecast needs it.</summary>
    public Preparing Preparing { get; } = Chain.Preparing;

    /// <summary>What one accepted recipient costs: the treatment of all that it takes to have one. Null where nothing is said, or nobody is accepted.</summary>
    public double? CostPerAccepted => Preparing.Used.Share > 0 ? Cost / Preparing.Used.Share : null;
}
