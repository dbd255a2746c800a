namespace Byrelaw.Judging.Criteria;

/// <summary><c>at most 1 of her mob with serum copper in the last 60 days less than 7 umol/L, from at least 10 animals</c>.</summary>
internal sealed class MobCountCriterion(HerdDays days, MobCountCondition condition, WindowSet windows, MobResults results)
    : MobCriterion(days, condition, condition.Measure, windows, condition.FromAtLeast, results)
{
    private readonly Limits _count = Limits.Of(condition.Count);
    private readonly NumberLimits _test = new(days, condition.Test);

    protected override bool IsLimitKnown(int animal) => _test.For(animal, null).IsKnown;

    protected override bool LeavesOpen(int animal, in MobResult result) => _test.For(animal, null).Accept(result.Low, result.High) == Truth.Unknown;

    protected override Truth Decide(int animal, MobSample sample, Notes? notes)
    {
        var limits = _test.For(animal, notes);
        int least = 0, most = 0;
        foreach (var value in sample.Sure)
        {
            var truth = limits.Accept(value.Low, value.High);
            least += truth == Truth.True ? 1 : 0;
            most += truth == Truth.False ? 0 : 1;
        }

        foreach (var value in sample.Perhaps)
        {
            most += limits.Accept(value.Low, value.High) == Truth.False ? 0 : 1;
        }

        notes?.Number(least, most, null, null, sample.Sure.Length, _count);
        return _count.Accept(least, most);
    }
}
