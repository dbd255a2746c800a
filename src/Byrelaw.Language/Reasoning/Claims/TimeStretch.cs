namespace Byrelaw.Language.Reasoning.Claims;

/// <summary>The times that a demand accepts, both ends included; null for no end.</summary>
internal readonly record struct TimeStretch(DaysLong? Least, DaysLong? Most)
{
    public static TimeStretch Of(TimeTest test)
    {
        var (low, high) = (DaysLong.Of(test.Low), DaysLong.Of(test.High));
        return test.Comparison switch
        {
            Comparison.AtLeast => new(low, null),
            Comparison.AtMost => new(null, low),
            Comparison.MoreThan => new(low.Plus(1), null),
            Comparison.LessThan => new(null, low.Plus(-1)),
            Comparison.Exactly => new(low, low),
            _ => new(low, high),
        };
    }
}
