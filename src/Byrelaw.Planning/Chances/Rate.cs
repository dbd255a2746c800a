using MathNet.Numerics.Distributions;

namespace Byrelaw.Planning.Chances;

/// <summary>A share of which something is known: what to expect of it, and how many animals stand behind it.</summary>
/// <param name="Share">Expected share, from 0 to 1.</param>
/// <param name="Weight">
/// Animals behind it, above 0: 80 for "36 of 80", 10 for an opinion worth ten animals; null where the share is taken as exact.
/// </param>
/// <remarks>
/// With a weight w the share is a beta distribution with the parameters w × share and w × (1 − share): its mean is the share
/// itself, and it is as sure as a share counted among w animals.
/// </remarks>
public readonly record struct Rate(double Share, double? Weight = null)
{
    /// <summary>Everybody, for sure.</summary>
    public static readonly Rate Always = new(1);

    /// <summary>Whether nothing about it is uncertain.</summary>
    public bool IsExact => Weight is null || Share is <= 0 or >= 1;

    /// <summary>Variance of the share itself, from what is not known of it.</summary>
    public double Variance => IsExact ? 0 : Share * (1 - Share) / (Weight!.Value + 1);

    /// <summary>A share as it is written, with its weight.</summary>
    /// <param name="share">From 0 to 1.</param>
    /// <param name="weight">Animals behind it, above 0; null where it is taken as exact.</param>
    /// <remarks>
    /// Ten of ten do not show that it always comes true, nor none of ten that it never does. There the count is read as half an animal of
    /// one more short of all, or above none.
    /// </remarks>
    public static Rate Backed(double share, double? weight) =>
        weight is { } animals && share is <= 0 or >= 1
            ? new(((share * animals) + 0.5) / (animals + 1), animals + 1)
            : new(share, weight);

    /// <summary>A share counted on so many animals.</summary>
    /// <param name="successes">For how many it came true.</param>
    /// <param name="of">Of how many; above 0.</param>
    public static Rate From(int successes, int of) => Backed((double)successes / of, of);

    /// <summary>The share with this mean and variance.</summary>
    /// <param name="mean">From 0 to 1.</param>
    /// <param name="variance">Below mean × (1 − mean); 0 (or no more than rounding leaves) for an exact share.</param>
    public static Rate Matching(double mean, double variance) =>
        variance <= 1e-14 || mean is <= 0 or >= 1 ? new(mean) : new(mean, (mean * (1 - mean) / variance) - 1);

    /// <summary>
    /// The share that passes this step and then the next. A product of uncertain shares is not quite a beta distribution: this one
    /// has its mean and its variance.
    /// </summary>
    public Rate Then(Rate next)
    {
        if (Share >= 1 || next.Share >= 1)
        {
            return Share >= 1 ? next : this;
        }

        var mean = Share * next.Share;
        var square = ((Share * Share) + Variance) * ((next.Share * next.Share) + next.Variance);
        return Matching(mean, square - (mean * mean));
    }

    /// <summary>
    /// The share among animals of two sorts, each taken as she comes: <paramref name="part"/> of them are of the other sort. It has the
    /// mean and the variance of that mixture.
    /// </summary>
    /// <param name="other">The share among the other sort.</param>
    /// <param name="part">How much of the whole the other sort is, from 0 to 1.</param>
    public Rate MixedWith(Rate other, double part) => Matching(
        ((1 - part) * Share) + (part * other.Share),
        ((1 - part) * (1 - part) * Variance) + (part * part * other.Variance));

    /// <summary>
    /// The chance that it comes true for the next animal, once it has for <paramref name="successes"/> of <paramref name="seen"/> of
    /// this season. What is seen this season tells about the rest of it, because they share one rate.
    /// </summary>
    public double NextAfter(int successes, int seen) =>
        IsExact ? Share : ((Share * Weight!.Value) + successes) / (Weight.Value + seen);

    /// <summary>The share that the true one stays below with this chance.</summary>
    /// <param name="chance">Between 0 and 1: 0.1 and 0.9 enclose it four times in five.</param>
    public double Quantile(double chance) =>
        IsExact ? Share : Beta.InvCDF(Share * Weight!.Value, (1 - Share) * Weight.Value, chance);
}
