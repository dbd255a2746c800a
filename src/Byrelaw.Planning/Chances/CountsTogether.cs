namespace Byrelaw.Planning.Chances;

/// <summary>How many there will be of two things that tell of each other, as fresh embryos carried and straws thawed for whoever found none: the chance of each pair.</summary>
/// <remarks>The second of the two has a most, and what would go beyond counts as that: the tank has so many straws and no more.</remarks>
internal sealed class CountsTogether
{
    /// <summary>So small a chance changes nothing.</summary>
    private const double Tiny = 1e-13;

    private readonly double[][] _rows;
    private readonly (int From, int To)[] _ends;

    private CountsTogether(double[][] rows) => (_rows, _ends) = (rows, [.. rows.Select(Ends)]);

    /// <summary>Embryos carried at one session, and recipients that found none: so many straws are thawed, as long as there are any.</summary>
    /// <param name="embryos">Fit for transfer.</param>
    /// <param name="recipients">Accepted.</param>
    /// <param name="straws">In the tank.</param>
    public static CountsTogether OfSession(Counts embryos, Counts recipients, int straws)
    {
        var rows = Empty(straws + 1, recipients.Most + 1);
        for (var accepted = recipients.Least; accepted <= recipients.Most; accepted++)
        {
            var chance = recipients.Exact(accepted);
            for (var made = embryos.Least; made < accepted && made <= embryos.Most; made++)
            {
                rows[Math.Min(accepted - made, straws)][made] += chance * embryos.Exact(made);
            }

            rows[0][accepted] += chance * embryos.AtLeast(accepted);
        }

        return new(rows);
    }

    /// <summary>With these chances: for each number of the second, a row over the first.</summary>
    /// <param name="rows">Of one length, adding up to 1.</param>
    public static CountsTogether Of(double[][] rows) => new(rows);

    /// <summary>Of nothing.</summary>
    /// <param name="straws">In the tank.</param>
    public static CountsTogether None(int straws)
    {
        var rows = Empty(straws + 1, 1);
        rows[0][0] = 1;
        return new(rows);
    }

    /// <summary>One of several cases, each with its weight.</summary>
    public static CountsTogether Mixed(IReadOnlyCollection<(double Weight, CountsTogether CountsTogether)> cases)
    {
        var sum = cases.Sum(@case => @case.Weight);
        var rows = Empty(cases.Max(@case => @case.CountsTogether._rows.Length), cases.Max(@case => @case.CountsTogether._rows[0].Length));
        foreach (var (weight, pairs) in cases)
        {
            for (var second = 0; second < pairs._rows.Length; second++)
            {
                Rows.Add(rows[second], pairs._rows[second], weight / sum);
            }
        }

        return new(rows);
    }

    /// <summary>Both together, where neither tells of the other.</summary>
    public CountsTogether Plus(CountsTogether others)
    {
        var most = _rows.Length - 1;
        var rows = Empty(most + 1, _rows[0].Length + others._rows[0].Length - 1);
        for (var second = 0; second <= most; second++)
        {
            for (var first = 0; first < _rows[second].Length; first++)
            {
                for (var more = 0; _rows[second][first] > Tiny && more < others._rows.Length; more++)
                {
                    var (from, to) = others._ends[more];
                    Rows.Add(rows[Math.Min(second + more, most)].AsSpan(first + from), others._rows[more].AsSpan(from, to - from), _rows[second][first]);
                }
            }
        }

        return new(rows);
    }

    /// <summary>So many times over, where no time tells of another.</summary>
    public CountsTogether Times(int times)
    {
        var (sum, power) = (None(_rows.Length - 1), this);
        for (var left = times; left > 0; left >>= 1)
        {
            sum = (left & 1) == 1 ? sum.Plus(power) : sum;
            power = left > 1 ? power.Plus(power) : power;
        }

        return sum;
    }

    /// <summary>Those for whom something comes true, at one rate for the first and another for the second, of which neither tells of the other.</summary>
    public CountsTogether ThinnedBy(Rate ofFirst, Rate ofSecond)
    {
        var (firsts, seconds) = (Counts.OneByOne(_rows[0].Length - 1, ofFirst).ToArray(), Counts.OneByOne(_rows.Length - 1, ofSecond).ToArray());
        var rows = Empty(_rows.Length, _rows[0].Length);
        for (var second = 0; second < _rows.Length; second++)
        {
            var row = new double[_rows[0].Length];
            for (var first = 0; first < row.Length; first++)
            {
                if (_rows[second][first] > 0)
                {
                    Rows.Add(row, firsts[first].Chances, _rows[second][first]);
                }
            }

            for (var left = 0; left <= seconds[second].Most; left++)
            {
                Rows.Add(rows[left], row, seconds[second].Exact(left));
            }
        }

        return new(rows);
    }

    /// <summary>Those for whom something comes true, at one rate that both share.</summary>
    public CountsTogether ThinnedBy(Rate shared) => Mixed([.. StandIns.ForRate(shared, 8).Select(@case => (@case.Weight, ThinnedBy(new(@case.Value), new(@case.Value))))]);

    /// <summary>How many there are of the two together.</summary>
    public Counts Sum()
    {
        var sum = new double[_rows.Length + _rows[0].Length - 1];
        for (var second = 0; second < _rows.Length; second++)
        {
            Rows.Add(sum.AsSpan(second), _rows[second], 1);
        }

        return new(sum);
    }

    /// <summary>The chances of the first with so many of the second, from none upwards; not brought to a sum of 1.</summary>
    public IReadOnlyList<double[]> Chances => _rows;

    /// <summary>How many there are of the second.</summary>
    public Counts Second() => new([.. _rows.Select(row => row.Sum())]);

    /// <summary>Between which places a row is more than tiny.</summary>
    private static (int From, int To) Ends(double[] row)
    {
        var (from, to) = (0, row.Length);
        while (to > from && row[to - 1] <= Tiny)
        {
            to--;
        }

        while (from < to && row[from] <= Tiny)
        {
            from++;
        }

        return (from, to);
    }

    private static double[][] Empty(int rows, int length)
    {
        var all = new double[rows][];
        for (var i = 0; i < rows; i++)
        {
            all[i] = new double[length];
        }

        return all;
    }
}
