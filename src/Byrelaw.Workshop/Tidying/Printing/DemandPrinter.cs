namespace Byrelaw.Workshop.Tidying.Printing;

/// <summary>Demands on counts, times and amounts.</summary>
internal static class DemandPrinter
{
    /// <summary><c>at least 2</c>; <c>exactly 0</c> for <c>no</c>, which stands only before what is counted.</summary>
    public static string Print(CountTestSyntax test) =>
        test.Low is null ? "exactly 0"
        : test.High is null ? $"{Print(test.Comparison)} {Words.Number(test.Low)}"
        : $"between {Words.Number(test.Low)} and {Words.Number(test.High)}";

    /// <summary><c>at least 56 days</c>.</summary>
    public static string Print(Comparison comparison, DurationSyntax low, DurationSyntax? high) =>
        high is null ? $"{Print(comparison)} {Words.Duration(low)}" : $"between {Words.Between(low, high)}";

    /// <summary><c>at least 7 umol/L</c>, <c>between 4.0 and 5.5</c>; a unit that both limits share stands once.</summary>
    public static string Print(CompareSyntax compare)
    {
        var (low, high) = (compare.Low, compare.High);
        if (high is null)
        {
            return $"{Print(compare.Comparison)} {Amount(low, Words.Number(low.Value))}";
        }

        if (low.IsPercent != high.IsPercent)
        {
            return $"between {Amount(low, Words.Number(low.Value))} and {Amount(high, Words.Number(high.Value))}";
        }

        var (a, b) = Words.Pair(low.Value, high.Value);
        var isShared = low.Unit is not null && high.Unit is not null && Words.Unit(low.Unit.Text, 0) == Words.Unit(high.Unit.Text, 0);
        return $"between {(isShared ? a : Amount(low, a))} and {Amount(high, b)}";
    }

    private static string Amount(AmountSyntax amount, string number) =>
        amount.IsPercent ? $"{number}%{(amount.Of is null ? "" : $" of {Words.Name(amount.Of)}")}"
        : amount.Unit is null ? number
        : $"{number} {Words.Unit(amount.Unit.Text, amount.Value.Value)}";

    private static string Print(Comparison comparison) => comparison switch
    {
        Comparison.AtLeast => "at least",
        Comparison.AtMost => "at most",
        Comparison.MoreThan => "more than",
        Comparison.LessThan => "less than",
        _ => "exactly",
    };
}
