namespace Byrelaw.Planning.Forecasting;

/// <summary>Straws for recipients that find no fresh embryo, session by session, as long as there are any. A straw loses nothing by waiting.</summary>
/// <param name="Straws">In the tank; 0 or more.</param>
/// <param name="AfterTransfer">What becomes of a transfer from the tank: the steps of the chain, at their own rates.</param>
public sealed record Tank(int Straws, ImmutableArray<TankStep> AfterTransfer);

/// <summary>A step after a transfer from the tank.</summary>
/// <param name="To">What is counted after it.</param>
/// <param name="Rate">Of what was counted before it.</param>
/// <param name="IsShared">Whether it is the very rate of fresh ones: what is not known of it is then the same for both.</param>
public sealed record TankStep(Stage To, Rate Rate, bool IsShared);
