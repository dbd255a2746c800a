namespace Byrelaw.Records.Embryos;

/// <summary>What has become of an embryo, and by which row.</summary>
/// <param name="State">What.</param>
/// <param name="By">The row that says so, or that leaves it in doubt; null for none.</param>
/// <param name="Why">Why it is in doubt; null where it is not.</param>
public sealed record EmbryoStanding(EmbryoStatus State, EmbryoRow? By = null, EmbryoDoubt? Why = null)
{
    /// <summary>The open row of a sheet that leaves it in doubt; null for none.</summary>
    public OpenRow? Sheet { get; init; }
}
