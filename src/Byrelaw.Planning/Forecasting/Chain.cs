namespace Byrelaw.Planning.Forecasting;

/// <summary>What a forecast rests on, whichever sessions there are.</summary>
/// <param name="Source">Where embryos come from.</param>
/// <param name="AfterTransfer">What becomes of transfers, step by step, each rate a share of the step before it.</param>
/// <param name="Goal">What is hoped for, if said.</param>
/// <param name="Tank">Straws for recipients that find no fresh embryo; null where there are none, or nothing is known of what becomes of them.</param>
public sealed record Chain(EmbryoSource Source, ImmutableArray<Step> AfterTransfer, Goal? Goal = null, Tank? Tank = null)
{
    /// <summary>Donors of whom the programme says more than of all.</summary>
    public ImmutableArray<OwnDonor> Own { get; init; } = [];
}

/// <summary>A step after the transfer.</summary>
/// <param name="To">What is counted after it.</param>
/// <param name="Rate">Of what was counted before it.</param>
public sealed record Step(Stage To, Rate Rate);

/// <summary>What the programme wants.</summary>
/// <param name="Of">What is counted; a stage of the chain.</param>
/// <param name="Count">So many at least.</param>
/// <param name="Certainty">How sure it should be, between 0 and 1.</param>
public sealed record Goal(Stage Of, int Count, double Certainty);
