namespace Byrelaw.Planning.Chances;

/// <summary>How many come at a time: oocytes at a collection, embryos at a flush.</summary>
/// <param name="Mean">Per time; 0 or more.</param>
/// <param name="Spread">
/// Standard deviation from one time to the next, over donors and days: two times in three, the number lies within about one spread
/// of the mean. Not the standard error that some publications print after ±.
/// </param>
/// <param name="Weight">How many times one would have to watch to be as sure of the mean; null where it is taken as exact.</param>
public readonly record struct Yield(double Mean, double Spread, double? Weight = null)
{
    /// <summary>One each time, for sure: a straw that is thawed.</summary>
    public static readonly Yield One = new(1, 0);

    /// <summary>
    /// The yield as a few cases that stand for all that the mean may truly be, with their weights: a gamma distribution with variance
    /// spread² / weight. A higher mean has a higher spread too, so that variance keeps its ratio to the mean.
    /// </summary>
    internal IReadOnlyList<(double Weight, double Mean, double Variance)> Cases(int cases)
    {
        var (mean, variance) = (Mean, Spread * Spread);
        if (Weight is not { } weight || mean <= 0 || variance <= 0)
        {
            return [(1, mean, variance)];
        }

        return [.. StandIns.ForGamma(mean, variance / weight, cases).Select(@case => (@case.Weight, @case.Value, variance * @case.Value / mean))];
    }
}
