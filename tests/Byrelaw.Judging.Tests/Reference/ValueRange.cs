namespace Byrelaw.Judging.Tests.Reference;

/// <summary>The values that a result allows: one number, or all from a lowest to a highest.</summary>
/// <param name="Low">The lowest; null where there is none.</param>
/// <param name="High">The highest; null where there is none.</param>
public readonly record struct ValueRange(decimal? Low, decimal? High)
{
    /// <summary>"A result not known may be any value."</summary>
    public static readonly ValueRange Any = new(null, null);

    /// <summary>As good as nothing, to say "just below 3" and "just above 10".</summary>
    public const decimal Hair = 0.000000000000001m;

    public static ValueRange Exactly(decimal value) => new(value, value);

    public bool IsAny => Low is null && High is null;

    /// <summary>The smallest range that holds both.</summary>
    public static ValueRange Hull(ValueRange a, ValueRange b) => new(
        a.Low is { } al && b.Low is { } bl ? Math.Min(al, bl) : null,
        a.High is { } ah && b.High is { } bh ? Math.Max(ah, bh) : null);

    /// <summary>Every difference of a value of <paramref name="a"/> and one of <paramref name="b"/>.</summary>
    public static ValueRange Minus(ValueRange a, ValueRange b) => new(a.Low - b.High, a.High - b.Low);

    /// <summary>"Averages and changes are rounded to 9 decimals before they are compared, so that 4.6 - 5.7 is -1.1."</summary>
    public ValueRange Rounded() => new(Round(Low), Round(High));

    private static decimal? Round(decimal? value) => value is { } known ? Math.Round(known, 9) : null;
}
