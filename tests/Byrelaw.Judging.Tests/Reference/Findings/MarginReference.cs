namespace Byrelaw.Judging.Tests.Reference;

/// <summary>How far what was found lies inside its limits, negative outside: one number against limits that are known.</summary>
public static class MarginReference
{
    /// <summary>Null where what was found is no single number, or a limit is not known.</summary>
    public static decimal? Of(Condition condition, Found found, AnimalAsRead animal) => (condition, found) switch
    {
        (_, FoundSince since) => Time((TimeTest)condition.Demand!, since.Elapsed),
        (_, FoundAge age) when age.Youngest == age.Oldest => Time((TimeTest)condition.Demand!, age.Oldest),
        (ApartCondition, _) => null,
        (_, FoundCount count) when count.AtLeast == count.AtMost => Counted((CountTest)condition.Demand!, count.AtLeast),
        (ParityCondition or MobCountCondition, FoundNumber number) when number.Low == number.High => Counted(CountOf(condition), (decimal)number.Low),
        (not MobCountCondition, FoundNumber number) when number.Low == number.High => Number((NumberTest)condition.Demand!, (decimal)number.Low, animal.Facts),
        _ => null,
    };

    private static CountTest CountOf(Condition condition) => condition switch
    {
        ParityCondition parity => parity.Test,
        MobCountCondition mob => mob.Count,
        _ => throw new ArgumentOutOfRangeException(nameof(condition)),
    };

    private static decimal Time(TimeTest test, TimeLength elapsed) => Between(test.Comparison, elapsed.Count, test.Low.Count, test.High.Count);

    /// <summary>More than two is three at least.</summary>
    private static decimal Counted(CountTest test, decimal count) => Between(
        test.Comparison, count, test.Low + (test.Comparison == Comparison.MoreThan ? 1 : 0), test.Comparison == Comparison.LessThan ? test.Low - 1 : test.High);

    private static decimal? Number(NumberTest test, decimal value, IReadOnlyList<FactCell> facts) =>
        NumberReference.LimitOf(test.Low, facts) is { Low: { } low } && NumberReference.LimitOf(test.High, facts) is { Low: { } high }
            ? Math.Round(Between(test.Comparison, value, low, high), 9) : null;

    private static decimal Between(Comparison comparison, decimal value, decimal low, decimal high) => comparison switch
    {
        Comparison.AtLeast or Comparison.MoreThan => value - low,
        Comparison.AtMost or Comparison.LessThan => high - value,
        _ => Math.Min(value - low, high - value),
    };
}
