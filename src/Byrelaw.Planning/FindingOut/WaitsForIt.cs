namespace Byrelaw.Planning.FindingOut;

/// <summary>Those who are named for a session and are sure no longer while a sample of their mob is at the laboratory.</summary>
/// <param name="Session">Which.</param>
/// <param name="Numbers">Their numbers, in order.</param>
/// <param name="BackInTime">Whether on the days that are told its result is back before any of them is treated or carries.</param>
public sealed record WaitsForIt(int Session, ImmutableArray<string> Numbers, bool BackInTime);
