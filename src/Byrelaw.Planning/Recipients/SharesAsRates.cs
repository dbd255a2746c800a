namespace Byrelaw.Planning.Recipients;

/// <summary>Shares as the rule files write them.</summary>
public static class SharesAsRates
{
    /// <summary>The share with the evidence that the file gives.</summary>
    public static Rate ToRate(this Share share)
    {
        ArgumentNullException.ThrowIfNull(share);
        return Rate.Backed(share.Value, share.Weight);
    }
}
