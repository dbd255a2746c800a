namespace Byrelaw.Workshop.Tuning;

/// <summary>Another number in the place of one of a condition's own; not of those written inside it.</summary>
/// <param name="part">Which number.</param>
/// <param name="isHigh">The higher of two.</param>
/// <param name="value">The number to stand there, in its unit.</param>
internal sealed class OtherNumber(NumberPart part, bool isHigh, double value) : OtherParts
{
    /// <summary>The condition with the number.</summary>
    public static Condition In(Condition condition, NumberPart part, bool isHigh, double value) => condition.With(new OtherNumber(part, isHigh, value))!;

    public override Condition? Item(Condition item) => item;

    public override double Number(ConditionNumber number) => number.Part == part && number.IsHigh == isHigh ? value : number.Value;
}
