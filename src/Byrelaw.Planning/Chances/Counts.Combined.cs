namespace Byrelaw.Planning.Chances;

/// <summary>What becomes of counts: losses, sums, the smaller of two, what is left over.</summary>
public sealed partial class Counts
{
    /// <summary>Those for whom something comes true at a rate that all of them share.</summary>
    /// <remarks>
    /// Exact: animals are taken one by one, and after k of n the next succeeds with the chance that the rate's evidence and these n
    /// together give. That is Pólya's urn, whose counts are beta-binomial; with an exact rate they are binomial.
    /// </remarks>
    public Counts ThinnedBy(Rate rate)
    {
        if (rate.Share >= 1)
        {
            return this;
        }

        var (sum, row) = (new double[_chances.Length], new double[_chances.Length + 1]);
        row[0] = 1;
        for (var seen = 0; seen < _chances.Length; seen++)
        {
            var chance = _chances[seen];
            for (var count = 0; count <= seen; count++)
            {
                sum[count] += chance * row[count];
            }

            AddOne(row, seen, rate);
        }

        return new(sum);
    }

    /// <summary>The chances for one animal more.</summary>
    /// <param name="row">The chances of each count among the animals seen; a place longer than they are.</param>
    /// <param name="seen">How many animals.</param>
    /// <param name="rate">That they share.</param>
    private static void AddOne(double[] row, int seen, Rate rate)
    {
        // The chance that the next one succeeds is a straight line in the count so far.
        var (first, step) = (rate.NextAfter(0, seen), rate.NextAfter(1, seen) - rate.NextAfter(0, seen));
        for (var count = seen; count >= 0; count--)
        {
            var succeeding = row[count] * (first + (step * count));
            row[count + 1] += succeeding;
            row[count] -= succeeding;
        }
    }

    /// <summary>These and others together, where neither tells of the other.</summary>
    public Counts Plus(Counts others)
    {
        var sum = new double[Most + others.Most + 1];
        for (var i = 0; i < _chances.Length; i++)
        {
            for (var j = 0; j < others._chances.Length; j++)
            {
                sum[i + j] += _chances[i] * others._chances[j];
            }
        }

        return new(sum);
    }

    /// <summary>So many times over, where no time tells of another.</summary>
    /// <param name="times">0 or more.</param>
    public Counts Times(int times)
    {
        var (sum, power) = (Exactly(0), this);
        for (var left = times; left > 0; left >>= 1)
        {
            if ((left & 1) == 1)
            {
                sum = sum.Plus(power);
            }

            if (left > 1)
            {
                power = power.Plus(power);
            }
        }

        return sum;
    }

    /// <summary>The smaller of these and others, where neither tells of the other: embryos and recipients make so many transfers.</summary>
    public Counts OrFewer(Counts others)
    {
        var chances = new double[Math.Min(Most, others.Most) + 1];
        var (these, those) = (0.0, 0.0);
        for (var count = Most; count >= chances.Length; count--)
        {
            these += _chances[count];
        }

        for (var count = others.Most; count >= chances.Length; count--)
        {
            those += others._chances[count];
        }

        for (var count = chances.Length - 1; count >= 0; count--)
        {
            var (here, there) = (_chances[count], others._chances[count]);
            chances[count] = (here * those) + (there * these) + (here * there);
            these += here;
            those += there;
        }

        return new(chances);
    }

    /// <summary>By how many these exceed others, where neither tells of the other; none where they do not.</summary>
    public Counts Beyond(Counts others)
    {
        var chances = new double[Most + 1];
        for (var i = 0; i <= Most; i++)
        {
            for (var j = 0; j <= others.Most; j++)
            {
                chances[Math.Max(i - j, 0)] += _chances[i] * others._chances[j];
            }
        }

        return new(chances);
    }
}
