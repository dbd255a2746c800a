namespace Byrelaw.Judging.Criteria;

/// <summary><c>average liver copper of her mob in the last 90 days, from at least 5 animals, at least 95 umol/kg</c>.</summary>
internal sealed class MobMeasuredCriterion(HerdDays days, MobMeasuredCondition condition, WindowSet windows, MobResults results)
    : MobCriterion(days, condition, condition.Measure, windows, condition.FromAtLeast, results)
{
    private readonly NumberLimits _test = new(days, condition.Test);

    protected override bool IsLimitKnown(int animal) => _test.For(animal, null).IsKnown;

    protected override bool LeavesOpen(int animal, in MobResult result) => result.Low != result.High;

    protected override Truth Decide(int animal, MobSample sample, Notes? notes)
    {
        var limits = _test.For(animal, notes);
        var (low, high) = Range(condition.Aggregate, sample);
        notes?.Number(low, high, condition.Measure.Unit?.Symbol, null, sample.Sure.Length, limits);
        return limits.Accept(low, high);
    }

    /// <summary>The lowest and highest that the aggregate may be, over all choices of those who may count.</summary>
    /// <param name="aggregate">Lowest, highest or average.</param>
    /// <param name="sample">At least one animal in it surely counts.</param>
    public static (double Low, double High) Range(Aggregate aggregate, MobSample sample) => aggregate switch
    {
        Aggregate.Lowest => (Least(sample.Sure, sample.Perhaps), sample.Sure.Min(value => value.High)),
        Aggregate.Highest => (sample.Sure.Max(value => value.Low), Greatest(sample.Sure, sample.Perhaps)),
        _ => (LowestMean(sample), HighestMean(sample)),
    };

    private static double Least(MobValue[] sure, MobValue[] perhaps) => sure.Concat(perhaps).Min(value => value.Low);

    private static double Greatest(MobValue[] sure, MobValue[] perhaps) => sure.Concat(perhaps).Max(value => value.High);

    /// <summary>The lowest mean over all choices of those who may count: the lowest of them, as long as they pull it down.</summary>
    private static double LowestMean(MobSample sample)
    {
        var sum = sample.Sure.Sum(value => value.Low);
        var count = sample.Sure.Length;
        foreach (var low in sample.Perhaps.Select(value => value.Low).Order())
        {
            if (low >= sum / count)
            {
                break;
            }

            sum += low;
            count++;
        }

        return Limits.Round(sum / count);
    }

    private static double HighestMean(MobSample sample)
    {
        var sum = sample.Sure.Sum(value => value.High);
        var count = sample.Sure.Length;
        foreach (var high in sample.Perhaps.Select(value => value.High).OrderDescending())
        {
            if (high <= sum / count)
            {
                break;
            }

            sum += high;
            count++;
        }

        return Limits.Round(sum / count);
    }
}
