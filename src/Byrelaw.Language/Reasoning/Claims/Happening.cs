namespace Byrelaw.Language.Reasoning.Claims;

/// <summary>Something that may happen to an animal: an event, a result, one answer of a test, a day in a spell.</summary>
/// <param name="Kind">The kind's place in the vocabulary; -1 for a day in a spell.</param>
/// <param name="Ago">The quantity "days since the last one"; <see cref="Quantities.Never"/> or more for never.</param>
/// <param name="NotBefore">The age before which it cannot happen.</param>
/// <param name="IsCalving">Whether it makes a cow of her.</param>
internal sealed record Happening(int Kind, int Ago, TimeLength? NotBefore, bool IsCalving);
