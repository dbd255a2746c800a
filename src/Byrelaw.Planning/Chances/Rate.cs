namespace Byrelaw.Planning.Chances;

/// <summary>
/// A share of which something is known: its likeliest value, and after how many animals one would be as sure of it.
/// </summary>
/// <param name="Share">Expected share, from 0 to 1.</param>
/// <param name="Weight">
/// Animals behind it: 80 for "36 of 80", 10 for an opinion worth ten animals; null where the share is taken as exact.
/// </param>
/// <remarks>
/// With a weight w the share is a beta distribution with parameters w × share and w × (1 − share): its mean is the share
/// itself, and its spread is that of a share seen among w animals.
/// </remarks>
public readonly record struct Rate(double Share, double? Weight = null)
{
    /// <summary>Parameter of the beta distribution that counts those for whom it came true.</summary>
    public double Successes => Share * (Weight ?? double.PositiveInfinity);

    /// <summary>Parameter of the beta distribution that counts the others.</summary>
    public double Failures => (1 - Share) * (Weight ?? double.PositiveInfinity);

    /// <summary>Whether nothing about it is uncertain.</summary>
    public bool IsExact => Weight is null || Share is <= 0 or >= 1;

    /// <summary>A share counted on so many animals.</summary>
    /// <param name="successes">For how many it came true.</param>
    /// <param name="of">Of how many; above 0.</param>
    public static Rate From(int successes, int of) => new((double)successes / of, of);
}
