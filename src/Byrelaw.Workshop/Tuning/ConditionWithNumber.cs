namespace Byrelaw.Workshop.Tuning;

/// <summary>A condition with another number in the place of one of its own.</summary>
internal static class ConditionWithNumber
{
    public static Condition Of(Condition condition, NumberPart part, bool isHigh, double value) => part switch
    {
        NumberPart.FirstWindow => WithWindow(condition, 0, isHigh, (int)value),
        NumberPart.SecondWindow => WithWindow(condition, 1, isHigh, (int)value),
        NumberPart.OfTheList when condition is ListCondition list => list with { Count = (int)value },
        NumberPart.OfTheMob when condition is MobCountCondition mob => mob with { Count = With(mob.Count, isHigh, (int)value) },
        NumberPart.Sampled => condition switch
        {
            MobMeasuredCondition mob => mob with { FromAtLeast = (int)value },
            MobCountCondition mob => mob with { FromAtLeast = (int)value },
            _ => condition,
        },
        _ => condition switch
        {
            CountCondition count => count with { Test = With(count.Test, isHigh, (int)value) },
            TimeSinceCondition since => since with { Test = With(since.Test, isHigh, (int)value) },
            AgeCondition age => age with { Test = With(age.Test, isHigh, (int)value) },
            ParityCondition parity => parity with { Test = With(parity.Test, isHigh, (int)value) },
            FactNumberCondition fact => fact with { Test = With(fact.Test, isHigh, value) },
            MeasuredCondition measured => measured with { Test = With(measured.Test, isHigh, value) },
            MobMeasuredCondition mob => mob with { Test = With(mob.Test, isHigh, value) },
            MobCountCondition mob => mob with { Test = With(mob.Test, isHigh, value) },
            StandingCondition standing => standing with { Percent = value },
            _ => condition,
        },
    };

    private static CountTest With(CountTest test, bool isHigh, int value) =>
        test.Comparison != Comparison.Between ? test with { Low = value, High = value } : isHigh ? test with { High = value } : test with { Low = value };

    private static TimeTest With(TimeTest test, bool isHigh, int value)
    {
        var (low, high) = (test.Low with { Count = value }, test.High with { Count = value });
        return test.Comparison != Comparison.Between ? test with { Low = low, High = low } : isHigh ? test with { High = high } : test with { Low = low };
    }

    private static NumberTest With(NumberTest test, bool isHigh, double value)
    {
        var (low, high) = (test.Low with { Value = value }, test.High with { Value = value });
        return test.Comparison != Comparison.Between ? test with { Low = low, High = low } : isHigh ? test with { High = high } : test with { Low = low };
    }

    private static Condition WithWindow(Condition condition, int place, bool isHigh, int count)
    {
        var windows = ConditionWindows.Of(condition);
        windows = windows.SetItem(place, With(windows[place], isHigh, count));
        return condition switch
        {
            CountCondition one => one with { Windows = windows },
            MeasuredCondition one => one with { Windows = windows },
            TestCondition one => one with { Windows = windows },
            MobMeasuredCondition one => one with { Windows = windows },
            MobCountCondition one => one with { Windows = windows },
            SpellCondition one => one with { Windows = windows },
            _ => condition,
        };
    }

    private static Window With(Window window, bool isHigh, int count) => window switch
    {
        InTheLast last => last with { Length = last.Length with { Count = count } },
        AtLeastAgo ago => ago with { Near = ago.Near with { Count = count } },
        BetweenAgo ago => isHigh ? ago with { Far = ago.Far with { Count = count } } : ago with { Near = ago.Near with { Count = count } },
        BeforeDate before => before with { Length = before.Length with { Count = count } },
        FromAfterLast after => after with { Wait = after.Wait with { Count = count } },
        _ => window,
    };
}
