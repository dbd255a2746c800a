using Byrelaw.Language.Units;

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

        if (finding.Condition.Demand?.Comparison == Comparison.Exactly && margin >= 0)
        {
            return "";
        }

        if (margin == 0)
        {
            return "at the limit";
        }

        var side = margin > 0 ? "to spare" : finding.Condition.Demand?.Comparison switch
        {
            Comparison.AtLeast or Comparison.MoreThan => "short",
            Comparison.AtMost or Comparison.LessThan => "over",
            _ => "outside",
        };
        return $"{Amount(Math.Abs(margin), finding.Condition)} {side}";
    }

    private static string Amount(double amount, Condition condition) => condition switch
    {
        MobCountCondition => Numbers.Count((int)amount, "animal", "animals"),
        { Demand: TimeTest time } => Time(amount, time),
        { Demand: NumberTest } => WithUnit(amount, UnitOf(condition)?.Symbol),
        _ => Numbers.Of(amount),
    };

    private static Unit? UnitOf(Condition condition)
    {
        var parts = new ConditionParts(condition);
        return parts.Kinds.OfType<MeasureKind>().FirstOrDefault() is { } measure ? measure.Unit : parts.Facts.FirstOrDefault()?.Unit;
    }

    private static string Time(double amount, TimeTest test) => new TimeLength((int)amount, test.Low.Unit).ToString();

    private static string WithUnit(double amount, string? unit) => unit is null ? Numbers.Beside(amount, 0) : $"{Numbers.Beside(amount, 0)} {unit}";
}
