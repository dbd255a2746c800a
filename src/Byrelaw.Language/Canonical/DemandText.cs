namespace Byrelaw.Language.Canonical;

/// <summary>Demands on counts, times and values.</summary>
internal static class DemandText
{
    /// <summary><c>at least 2</c>.</summary>
    public static string Of(CountTest test) => Of(test.Comparison, NumberText.Of(test.Low), NumberText.Of(test.High));

    /// <summary><c>between 6 and 8 days</c>.</summary>
    public static string Of(TimeTest test) => test.Comparison == Comparison.Between
        ? "between " + Between(test.Low, test.High)
        : Of(test.Comparison, test.Low.ToString(), "");

    /// <summary><c>6 and 8 days</c>, <c>4 weeks and 3 months</c>.</summary>
    public static string Between(TimeLength low, TimeLength high) =>
        $"{(low.Unit == high.Unit ? NumberText.Of(low.Count) : low.ToString())} and {high}";

    /// <summary><c>at least 7 umol/L</c>, <c>at least 60% of mature weight</c>.</summary>
    public static string Of(NumberTest test, Unit? unit, Func<string, string> name)
    {
        var isShared = test.Comparison == Comparison.Between && test.Low.PercentOf is null && test.High.PercentOf is null;
        return Of(test.Comparison, Of(test.Low, isShared ? null : unit, name), Of(test.High, unit, name));
    }

    private static string Of(Limit limit, Unit? unit, Func<string, string> name) =>
        limit.PercentOf is { } fact ? $"{NumberText.Of(limit.Value)}% of {name(fact.Name)}"
        : unit is null ? NumberText.Of(limit.Value)
        : $"{NumberText.Of(limit.Value)} {unit.Symbol}";

    private static string Of(Comparison comparison, string low, string high) => comparison switch
    {
        Comparison.AtLeast => $"at least {low}",
        Comparison.AtMost => $"at most {low}",
        Comparison.MoreThan => $"more than {low}",
        Comparison.LessThan => $"less than {low}",
        Comparison.Exactly => $"exactly {low}",
        _ => $"between {low} and {high}",
    };
}
