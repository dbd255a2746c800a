namespace Byrelaw.Judging.Tuning;

/// <summary>Cuts what a number may be into ranges in which no answer can change.</summary>
internal static class TrialValues
{
    /// <summary>How far apart two values are that are no whole numbers.</summary>
    public const decimal Grain = 0.000001m;

    private const double Most = 1e15;

    /// <summary>Every whole number from the lowest that makes sense to one after which nothing changes any more.</summary>
    public static TriedValue[] Whole(ConditionNumber number, int enough)
    {
        var lowest = (int)(number.Lowest ?? 0);
        var highest = (int?)number.Highest;
        var last = Math.Max(lowest, Math.Min(enough, highest ?? enough));
        return [.. Enumerable.Range(lowest, last - lowest + 1).Select(value => new TriedValue(new ValueRange(value, value == last ? highest : value), value))];
    }

    /// <summary>Each number that is compared with the limit, and what lies between two of them.</summary>
    /// <param name="number">The limit.</param>
    /// <param name="compared">Every number at which the answer of any animal on any day may change; more do no harm.</param>
    public static TriedValue[] Between(ConditionNumber number, IEnumerable<double> compared)
    {
        decimal? lowest = number.Lowest is { } low ? Down(low) : null, highest = number.Highest is { } high ? Up(high) : null;

        // A value in force that makes no sense is still one of them.
        lowest = lowest > highest ? highest : lowest;
        var points = new SortedSet<decimal>();
        foreach (var one in compared.Where(one => Math.Abs(one) < Most))
        {
            points.Add(Down(one));
            points.Add(Up(one));
        }

        points.RemoveWhere(point => point < lowest || point > highest);
        var trials = new List<TriedValue>();
        var from = lowest;
        foreach (var point in points)
        {
            Gap(trials, from, point - Grain);
            trials.Add(new TriedValue(new ValueRange(point, point), point));
            from = point + Grain;
        }

        Gap(trials, from, highest);
        return [.. trials];
    }

    private static void Gap(List<TriedValue> trials, decimal? from, decimal? to)
    {
        if (from is { } low && to is { } high && low > high)
        {
            return;
        }

        var value = (from, to) switch
        {
            ({ } a, { } b) => Math.Floor((a + b) / 2 / Grain) * Grain,
            ({ } a, null) => a,
            (null, { } b) => b,
            _ => 0,
        };
        trials.Add(new TriedValue(new ValueRange(from, to), value));
    }

    private static decimal Down(double value) => Math.Floor((decimal)value / Grain) * Grain;

    private static decimal Up(double value) => Math.Ceiling((decimal)value / Grain) * Grain;
}
