namespace Byrelaw.Planning.Chances;

/// <summary>Where counts come from.</summary>
public sealed partial class Counts
{
    /// <summary>Exactly so many.</summary>
    /// <param name="count">0 or more.</param>
    public static Counts Exactly(int count)
    {
        var chances = new double[count + 1];
        chances[count] = 1;
        return new(chances);
    }

    /// <summary>So many of <paramref name="animals"/> animals that share one rate: binomial, or beta-binomial if the rate is uncertain.</summary>
    public static Counts Of(int animals, Rate rate) => Exactly(animals).ThinnedBy(rate);

    /// <summary>The same for no animal, for one, for two and so on.</summary>
    /// <param name="most">The last number of animals.</param>
    /// <param name="rate">That they share.</param>
    public static IEnumerable<Counts> OneByOne(int most, Rate rate)
    {
        var row = new double[most + 2];
        row[0] = 1;
        for (var animals = 0; animals <= most; animals++)
        {
            yield return new(row.AsSpan(0, animals + 1));
            AddOne(row, animals, rate);
        }
    }

    /// <summary>Counts with this mean and variance, of the family whose chances rise and fall by the simplest law.</summary>
    /// <param name="mean">0 or more.</param>
    /// <param name="variance">
    /// 0 or more. Above the mean the counts are negative binomial, equal to it Poisson, below it binomial (or between two binomials, where
    /// no whole number of animals gives this variance); never less than whole numbers on either side of the mean must have.
    /// </param>
    /// <remarks>
    /// In all three the chance of k + 1 is that of k, times (mean² / variance + k (1 − mean / variance)) / (k + 1). Chances are worked
    /// out from the likeliest count outwards, so that none overflows, and brought to a sum of 1.
    /// </remarks>
    public static Counts Around(double mean, double variance)
    {
        if (mean <= 0 || (variance <= Negligible * mean && mean == Math.Round(mean)))
        {
            return Exactly((int)Math.Max(0, mean));
        }

        // Far from the last animal of a binomial it makes no difference that the number of animals is not whole.
        if (variance < mean && mean * mean / (mean - variance) < (2 * mean) + 20)
        {
            return Tight(mean, variance);
        }

        var (start, slope) = (mean * mean / variance, 1 - (mean / variance));
        var first = (int)mean;
        var up = new List<double> { 1 };
        for (var count = first; up[^1] > Negligible * Negligible; count++)
        {
            var step = (start + (slope * count)) / (count + 1);
            if (step <= Negligible)
            {
                break;
            }

            up.Add(up[^1] * step);
        }

        var chances = new double[first + up.Count];
        up.CopyTo(chances, first);
        for (var count = first - 1; count >= 0; count--)
        {
            chances[count] = chances[count + 1] * (count + 1) / (start + (slope * count));
        }

        return new(chances);
    }

    /// <summary>
    /// Counts that vary less than Poisson's: of two kinds with this very mean, one with less variance and one with more, so mixed
    /// that the variance is right too.
    /// </summary>
    private static Counts Tight(double mean, double variance)
    {
        var fewer = (int)(mean * mean / (mean - variance));
        var (less, more) = fewer < mean ? (Neighbours(mean), Binomial((int)mean + 1, mean)) : (Binomial(fewer, mean), Binomial(fewer + 1, mean));
        var weight = Math.Clamp((variance - less.Variance) / (more.Variance - less.Variance), 0, 1);
        return Mixed([(1 - weight, less.Counts), (weight, more.Counts)]);
    }

    private static (Counts Counts, double Variance) Binomial(int animals, double mean) =>
        (Of(animals, new(mean / animals)), mean * (1 - (mean / animals)));

    /// <summary>The whole numbers on either side of the mean: no counts vary less.</summary>
    private static (Counts Counts, double Variance) Neighbours(double mean)
    {
        var below = (int)mean;
        var above = mean - below;
        return (Mixed([(1 - above, Exactly(below)), (above, Exactly(below + 1))]), above * (1 - above));
    }

    /// <summary>One of several cases, each with its weight.</summary>
    /// <param name="cases">At least one, their weights above 0 in sum.</param>
    public static Counts Mixed(IReadOnlyCollection<(double Weight, Counts Counts)> cases)
    {
        var sum = new double[cases.Max(@case => @case.Counts.Most) + 1];
        foreach (var (weight, counts) in cases)
        {
            for (var count = 0; count <= counts.Most; count++)
            {
                sum[count] += weight * counts._chances[count];
            }
        }

        return new(sum);
    }
}
