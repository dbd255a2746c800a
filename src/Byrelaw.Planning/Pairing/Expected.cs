namespace Byrelaw.Planning.Pairing;

/// <summary>How many of some pairs come true: each has a chance of its own, and the counts are added up exactly.</summary>
/// <param name="Mean">On average.</param>
/// <param name="From">In one of ten such days there are fewer than this.</param>
/// <param name="To">In one of ten more than this.</param>
public sealed record Expected(double Mean, int From, int To)
{
    private const double Tail = 0.1;

    /// <summary>Of chances from 0 to 1.</summary>
    public static Expected Of(IReadOnlyList<double> chances)
    {
        ArgumentNullException.ThrowIfNull(chances);
        var counts = new double[chances.Count + 1];
        counts[0] = 1;
        for (var pair = 0; pair < chances.Count; pair++)
        {
            for (var count = pair + 1; count > 0; count--)
            {
                counts[count] = (counts[count] * (1 - chances[pair])) + (counts[count - 1] * chances[pair]);
            }

            counts[0] *= 1 - chances[pair];
        }

        return new(chances.Sum(), Reaching(counts, Tail), Reaching(counts, 1 - Tail));
    }

    /// <summary>The least count that is not exceeded with such a chance.</summary>
    private static int Reaching(double[] counts, double chance)
    {
        var (count, sum) = (0, counts[0]);
        while (sum < chance && count < counts.Length - 1)
        {
            sum += counts[++count];
        }

        return count;
    }
}
