namespace Byrelaw.Judging.Tuning;

/// <summary>Values that a number may take, both ends included. Whole numbers stand one apart, all others six decimals: finer than anybody
/// writes, coarser than the judge rounds.</summary>
/// <param name="From">The lowest; null for no end.</param>
/// <param name="To">The highest; null for no end.</param>
public readonly record struct ValueRange(decimal? From, decimal? To)
{
    /// <summary>Whether a value lies in it.</summary>
    public bool Holds(decimal value) => (From is not { } from || from <= value) && (To is not { } to || value <= to);
}
