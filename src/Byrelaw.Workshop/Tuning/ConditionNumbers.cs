namespace Byrelaw.Workshop.Tuning;

/// <summary>Which numbers a condition holds.</summary>
internal static class ConditionNumbers
{
    /// <summary>Limits first, then windows. Of a list only its own count; its bullets' numbers are theirs.</summary>
    public static IEnumerable<ConditionNumber> In(Condition condition) => Limits(condition).Concat(Windows(ConditionWindows.Of(condition)));

    private static IEnumerable<ConditionNumber> Limits(Condition condition) => condition switch
    {
        // `no X` holds no number that anybody wrote.
        CountCondition { Test: { Comparison: Comparison.Exactly, Low: 0 } } => [],
        CountCondition count => Count(count.Test, NumberPart.Limit),
        TimeSinceCondition since => Time(since.Test),
        AgeCondition age => Time(age.Test),
        ParityCondition parity => Count(parity.Test, NumberPart.Limit),
        FactNumberCondition fact => Amount(fact.Test, fact.Fact.Unit, null),
        MeasuredCondition measured => Measured(measured.Test, measured.Measure, measured.Aggregate == Aggregate.Change),
        MobMeasuredCondition mob => Measured(mob.Test, mob.Measure, false).Append(Sampled(mob.FromAtLeast)),
        MobCountCondition mob => (mob.Count is { Comparison: Comparison.Exactly, Low: 0 } ? [] : Count(mob.Count, NumberPart.OfTheMob))
            .Concat(Measured(mob.Test, mob.Measure, false)).Append(Sampled(mob.FromAtLeast)),
        StandingCondition standing => [new(NumberPart.Limit, false, standing.Percent, NumberSort.Share) { Lowest = 0.000001, Highest = 100 }],
        ListCondition { Kind: ListKind.AtLeastOf } list => [new(NumberPart.OfTheList, false, list.Count, NumberSort.Count) { Lowest = 1, Highest = list.Items.Length }],
        _ => [],
    };

    private static IEnumerable<ConditionNumber> Count(CountTest test, NumberPart part)
    {
        var isBetween = test.Comparison == Comparison.Between;

        // At least none asks for nothing, so the least that a rule would ask for is one.
        var lowest = test.Comparison == Comparison.AtLeast ? Math.Min(1, test.Low) : 0;
        yield return new(part, false, test.Low, NumberSort.Count) { Comparison = test.Comparison, Lowest = lowest, Highest = isBetween ? test.High : null };
        if (isBetween)
        {
            yield return new(part, true, test.High, NumberSort.Count) { Comparison = test.Comparison, Lowest = test.Low };
        }
    }

    private static IEnumerable<ConditionNumber> Time(TimeTest test)
    {
        var isBetween = test.Comparison == Comparison.Between;
        foreach (var one in isBetween ? Times(NumberPart.Limit, test.Low, test.High) : [OneTime(NumberPart.Limit, test.Low)])
        {
            yield return one with { Comparison = test.Comparison };
        }
    }

    private static ConditionNumber OneTime(NumberPart part, TimeLength length) => new(part, false, length.Count, NumberSort.Time) { TimeUnit = length.Unit, Lowest = 0 };

    /// <summary>Two lengths of which neither may pass the other; written in two units, each keeps what it may be in whichever month.</summary>
    private static IEnumerable<ConditionNumber> Times(NumberPart part, TimeLength low, TimeLength high) =>
    [
        OneTime(part, low) with { Highest = Most(low, high) },
        OneTime(part, high) with { IsHigh = true, Lowest = Least(low, high) },
    ];

    private static int Most(TimeLength low, TimeLength high)
    {
        var most = low.Unit == high.Unit ? high.Count : (int)(FewestDays(high) / MostDaysOfOne(low.Unit));
        return Math.Max(most, low.Count);
    }

    private static int Least(TimeLength low, TimeLength high)
    {
        var least = low.Unit == high.Unit ? low.Count : (int)Math.Ceiling(low.Count * MostDaysOfOne(low.Unit) / FewestDaysOfOne(high.Unit));
        return Math.Min(least, high.Count);
    }

    private static double FewestDays(TimeLength length) => length.Count * FewestDaysOfOne(length.Unit);

    private static double FewestDaysOfOne(TimeUnit unit) => unit switch { TimeUnit.Days => 1, TimeUnit.Weeks => 7, TimeUnit.Months => 28, _ => 365 };

    private static double MostDaysOfOne(TimeUnit unit) => unit switch { TimeUnit.Days => 1, TimeUnit.Weeks => 7, TimeUnit.Months => 31, _ => 366 };

    private static IEnumerable<ConditionNumber> Measured(NumberTest test, MeasureKind measure, bool isChange)
    {
        var reach = measure.Scale is { } scale ? scale.To - scale.From : 0;
        var within = measure.Scale is null ? null : isChange ? new Scale(-reach, reach) : measure.Scale;
        return Amount(test, measure.Unit, within, mayBeNegative: isChange);
    }

    private static IEnumerable<ConditionNumber> Amount(NumberTest test, Unit? unit, Scale? scale, bool mayBeNegative = true)
    {
        var isBetween = test.Comparison == Comparison.Between;
        var isBound = isBetween && test.Low.PercentOf == test.High.PercentOf && test.Low.Value <= test.High.Value;
        var low = Of(test.Low);
        yield return isBound ? low with { Highest = test.High.Value } : low;
        if (isBetween)
        {
            var high = Of(test.High) with { IsHigh = true };
            yield return isBound ? high with { Lowest = test.Low.Value } : high;
        }

        ConditionNumber Of(Limit limit) => limit.PercentOf is not null
            ? new(NumberPart.Limit, false, limit.Value, NumberSort.Share) { Comparison = test.Comparison, Lowest = 0 }
            : new(NumberPart.Limit, false, limit.Value, NumberSort.Amount)
            {
                Comparison = test.Comparison,
                Unit = unit,
                Lowest = scale?.From ?? (mayBeNegative ? null : 0),
                Highest = scale?.To,
            };
    }

    private static ConditionNumber Sampled(int animals) => new(NumberPart.Sampled, false, animals, NumberSort.Count) { Lowest = 1 };

    private static IEnumerable<ConditionNumber> Windows(ImmutableArray<Window> windows) => windows.SelectMany((window, place) =>
    {
        var part = place == 0 ? NumberPart.FirstWindow : NumberPart.SecondWindow;
        return window switch
        {
            InTheLast last => [OneTime(part, last.Length)],
            AtLeastAgo ago => [OneTime(part, ago.Near)],
            BetweenAgo ago => Times(part, ago.Near, ago.Far),
            BeforeDate before => [OneTime(part, before.Length)],
            FromAfterLast from => [OneTime(part, from.Wait)],
            _ => Enumerable.Empty<ConditionNumber>(),
        };
    });
}
