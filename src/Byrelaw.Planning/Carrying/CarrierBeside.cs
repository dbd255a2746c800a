namespace Byrelaw.Planning.Carrying;

/// <summary>One sort of recipients, beside the others.</summary>
/// <param name="Carrier">Which; cows are those in milk.</param>
/// <param name="Sure">How many of them are sure of a session that is not over, by a method that may be used.</param>
/// <param name="ToAsk">How many are to ask about, and sure of none.</param>
/// <param name="Pregnant">What is assumed of a transfer into them; null for nothing. It is the line of all cows, or of all recipients, where they have none of their own.</param>
/// <param name="CostPerLiveCalf">Embryo, transfer, and the treatment of all that it takes to have one accepted, for each live calf; null where that cannot be told.</param>
/// <param name="IsAtLeast">Whether the embryo or the transfer has no price.</param>
/// <param name="Bought">What more of them would bring; null where nothing can be forecast.</param>
public sealed record CarrierBeside(Carrier Carrier, int Sure, int ToAsk, Assumption? Pregnant, double? CostPerLiveCalf, bool IsAtLeast, BoughtIn? Bought);

/// <summary>What it would bring to buy recipients of a sort in: as many as there are places that stay empty even if all who are asked about pass, or one for each session where none does.</summary>
/// <param name="Animals">How many.</param>
/// <param name="Fills">Whether they fill empty places.</param>
/// <param name="More">How many more of what is wanted to expect.</param>
/// <param name="Chance">By how much the chance of what is wanted rises; null where nothing is wanted.</param>
public sealed record BoughtIn(int Animals, bool Fills, double More, double? Chance);
