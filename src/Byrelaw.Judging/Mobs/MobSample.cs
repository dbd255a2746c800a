namespace Byrelaw.Judging.Mobs;

/// <summary>What a mob's samples of some days say: one value (or range) for each animal.</summary>
/// <param name="Sure">Animals that surely count.</param>
/// <param name="Perhaps">Animals whose mob was not on record on the day: they may count or not.</param>
/// <param name="Results">All results behind them, by day.</param>
/// <param name="Counted">Those of them that surely count: of each animal the results of her latest day, and rows of the mob itself.</param>
internal sealed record MobSample(MobValue[] Sure, MobValue[] Perhaps, MobResult[] Results, MobResult[] Counted)
{
    /// <summary>Takes each animal's latest day; several results of that day allow any value between them.</summary>
    public static MobSample Of(ReadOnlySpan<MobResult> placed, ReadOnlySpan<MobResult> unplaced)
    {
        var sure = new List<MobValue>();
        var latest = new Dictionary<int, (int Day, MobValue Value)>();
        foreach (var result in placed)
        {
            var value = new MobValue(result.Low, result.High);
            if (result.Animal == MobResult.NoAnimal)
            {
                sure.Add(value);
            }
            else
            {
                latest[result.Animal] = latest.TryGetValue(result.Animal, out var before) && before.Day == result.Day
                    ? (result.Day, before.Value.Or(value))
                    : (result.Day, value);
            }
        }

        var counted = new List<MobResult>();
        foreach (var result in placed)
        {
            if (result.Animal == MobResult.NoAnimal || latest[result.Animal].Day == result.Day)
            {
                counted.Add(result);
            }
        }

        var perhaps = new Dictionary<int, (int Day, MobValue Value)>();
        var ofHerd = new List<MobValue>();
        foreach (var result in unplaced)
        {
            var value = new MobValue(result.Low, result.High);
            if (result.Animal == MobResult.NoAnimal)
            {
                ofHerd.Add(value);
            }
            else if (latest.TryGetValue(result.Animal, out var known))
            {
                // Sampled in the mob, and again when her mob was not on record: either may be what counts.
                if (result.Day >= known.Day)
                {
                    latest[result.Animal] = (known.Day, known.Value.Or(value));
                }
            }
            else
            {
                perhaps[result.Animal] = perhaps.TryGetValue(result.Animal, out var before)
                    ? (result.Day, before.Value.Or(value))
                    : (result.Day, value);
            }
        }

        sure.AddRange(latest.Values.Select(entry => entry.Value));
        return new MobSample([.. sure], [.. perhaps.Values.Select(entry => entry.Value), .. ofHerd], [.. placed, .. unplaced], [.. counted]);
    }
}

/// <summary>The values one animal's results allow.</summary>
internal readonly record struct MobValue(double Low, double High)
{
    public MobValue Or(MobValue other) => new(Math.Min(Low, other.Low), Math.Max(High, other.High));
}
