namespace Byrelaw.Reporting.Words;

/// <summary>How far a finding is from its limit: <c>13 days short</c>, <c>0.5 to spare</c>, <c>at the limit</c>.</summary>
public static class MarginWords
{
    /// <summary>Empty where there is no such number.</summary>
    public static string Of(Finding finding)
    {
        if (finding.Margin is not { } margin || double.IsInfinity(margin) || double.IsNaN(margin))
        {
            return "";
        }

        if (ComparisonOf(finding.Condition) == Comparison.Exactly && margin >= 0)
        {
            return "";
        }

        if (margin == 0)
        {
            return "at the limit";
        }

        var side = margin > 0 ? "to spare" : ComparisonOf(finding.Condition) switch
        {
            Comparison.AtLeast or Comparison.MoreThan => "short",
            Comparison.AtMost or Comparison.LessThan => "over",
            _ => "outside",
        };
        return $"{Amount(Math.Abs(margin), finding.Condition)} {side}";
    }

    private static string Amount(double amount, Condition condition) => condition switch
    {
        TimeSinceCondition since => Time(amount, since.Test),
        AgeCondition age => Time(amount, age.Test),
        MeasuredCondition measured => WithUnit(amount, measured.Measure.Unit?.Symbol),
        MobMeasuredCondition mob => WithUnit(amount, mob.Measure.Unit?.Symbol),
        FactNumberCondition fact => WithUnit(amount, fact.Fact.Unit?.Symbol),
        MobCountCondition => Numbers.Count((int)amount, "animal", "animals"),
        _ => Numbers.Of(amount),
    };

    private static string Time(double amount, TimeTest test) => new TimeLength((int)amount, test.Low.Unit).ToString();

    private static string WithUnit(double amount, string? unit) => unit is null ? Numbers.Beside(amount, 0) : $"{Numbers.Beside(amount, 0)} {unit}";

    private static Comparison? ComparisonOf(Condition condition) => condition switch
    {
        CountCondition count => count.Test.Comparison,
        ParityCondition parity => parity.Test.Comparison,
        MobCountCondition mob => mob.Count.Comparison,
        TimeSinceCondition since => since.Test.Comparison,
        AgeCondition age => age.Test.Comparison,
        MeasuredCondition measured => measured.Test.Comparison,
        MobMeasuredCondition mob => mob.Test.Comparison,
        FactNumberCondition fact => fact.Test.Comparison,
        _ => null,
    };
}
