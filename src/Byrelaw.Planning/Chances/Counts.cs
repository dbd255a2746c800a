namespace Byrelaw.Planning.Chances;

/// <summary>How many there will be: the chance of none, of one, of two and so on.</summary>
public sealed partial class Counts
{
    /// <summary>What is dropped at either end: less than one in a million million.</summary>
    private const double Negligible = 1e-12;

    private readonly double[] _chances;
    private readonly int _least;

    /// <param name="chances">Of 0, 1, 2 ...; never negative, and above 0 in sum. They are brought to a sum of 1.</param>
    public Counts(ReadOnlySpan<double> chances)
    {
        var length = chances.Length;
        var sum = 0.0;
        foreach (var chance in chances)
        {
            sum += chance;
        }

        for (var tail = 0.0; length > 1 && tail + chances[length - 1] <= Negligible * sum; length--)
        {
            tail += chances[length - 1];
        }

        _chances = chances[..length].ToArray();
        for (var below = 0.0; _least < length - 1 && below + _chances[_least] <= Negligible * sum; _least++)
        {
            below += _chances[_least];
            _chances[_least] = 0;
        }

        sum = 0;
        foreach (var chance in _chances)
        {
            sum += chance;
        }

        for (var count = 0; count < length; count++)
        {
            _chances[count] /= sum;
        }
    }

    /// <summary>The chance of each count, from 0 to <see cref="Most"/>.</summary>
    public ReadOnlySpan<double> Chances => _chances;

    /// <summary>The largest count whose chance is not negligible.</summary>
    public int Most => _chances.Length - 1;

    /// <summary>The smallest count whose chance is not negligible.</summary>
    public int Least => _least;

    /// <summary>What to expect on average.</summary>
    public double Mean
    {
        get
        {
            var mean = 0.0;
            for (var count = 1; count < _chances.Length; count++)
            {
                mean += count * _chances[count];
            }

            return mean;
        }
    }

    /// <summary>Standard deviation.</summary>
    public double Spread
    {
        get
        {
            var (mean, variance) = (Mean, 0.0);
            for (var count = 0; count < _chances.Length; count++)
            {
                variance += (count - mean) * (count - mean) * _chances[count];
            }

            return Math.Sqrt(variance);
        }
    }

    /// <summary>The chance of exactly so many.</summary>
    public double Exact(int count) => count < 0 || count > Most ? 0 : _chances[count];

    /// <summary>The chance of so many or more.</summary>
    public double AtLeast(int count)
    {
        var sum = 0.0;
        for (var i = Most; i >= Math.Max(count, 0); i--)
        {
            sum += _chances[i];
        }

        return Math.Min(sum, 1);
    }

    /// <summary>The smallest count that is not exceeded with this chance: 0.5 for the middle one, 0.1 for a poor outcome.</summary>
    /// <param name="chance">Between 0 and 1.</param>
    public int Quantile(double chance)
    {
        var sum = 0.0;
        for (var count = 0; count < Most; count++)
        {
            sum += _chances[count];
            if (sum >= chance)
            {
                return count;
            }
        }

        return Most;
    }

    /// <summary>The most that can be counted on with this certainty: there are so many or more at least as surely as asked.</summary>
    /// <param name="certainty">Between 0 and 1.</param>
    public int CountedOn(double certainty)
    {
        var sum = 0.0;
        for (var count = Most; count > 0; count--)
        {
            sum += _chances[count];
            if (sum >= certainty)
            {
                return count;
            }
        }

        return 0;
    }
}
