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
            if (seen >= _least)
            {
                Rows.Add(sum, row.AsSpan(0, seen + 1), _chances[seen]);
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
        var first = rate.NextAfter(0, seen);
        Rows.AddOne(row.AsSpan(0, seen + 2), first, rate.NextAfter(1, seen) - first);
    }

    /// <summary>These and others together, where neither tells of the other.</summary>
    public Counts Plus(Counts others)
    {
        var sum = new double[Most + others.Most + 1];
        var (few, many) = Most - _least < others.Most - others._least ? (this, others) : (others, this);
        var row = many._chances.AsSpan(many._least);
        for (var count = few._least; count <= few.Most; count++)
        {
            if (few._chances[count] > 0)
            {
                Rows.Add(sum.AsSpan(count + many._least), row, few._chances[count]);
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

    /// <summary>These, with all that is beyond so many counted as so many.</summary>
    /// <param name="most">0 or more.</param>
    public Counts OrAtMost(int most)
    {
        if (Most <= most)
        {
            return this;
        }

        var chances = _chances[..(most + 1)];
        chances[most] = AtLeast(most);
        return new(chances);
    }

    /// <summary>How these exceed others, where neither tells of the other.</summary>
    public Excess Beyond(Counts others)
    {
        // From the top down: the chance of more than so many of these, and by how many on average.
        var (more, by, chance, mean) = (0.0, 0.0, 0.0, 0.0);
        for (var count = Most; count >= 0; count--)
        {
            by += more;
            if (count <= others.Most)
            {
                chance += others._chances[count] * more;
                mean += others._chances[count] * by;
            }

            more += _chances[count];
        }

        return new(chance, mean);
    }
}

/// <summary>How one count exceeds another.</summary>
/// <param name="Chance">That it does.</param>
/// <param name="Mean">By how many on average, none where it does not.</param>
public readonly record struct Excess(double Chance, double Mean)
{
    /// <summary>It never does.</summary>
    public static readonly Excess None;
}
