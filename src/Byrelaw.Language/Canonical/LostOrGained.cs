namespace Byrelaw.Language.Canonical;

/// <summary>How people say a change of a measured value: <c>change at least -0.5</c> is <c>lost at most 0.5</c>.</summary>
public static class LostOrGained
{
    /// <summary>The word, the comparison and the number as people say them; null for a demand with two limits, or on one number alone.</summary>
    /// <param name="comparison">Of the latest result less the earliest.</param>
    /// <param name="limit">The limit; per cent of a fact too.</param>
    public static (string Word, Comparison Comparison, double Limit)? Of(Comparison comparison, double limit)
    {
        return comparison switch
        {
            Comparison.AtLeast => limit <= 0 ? Lost(Comparison.AtMost) : Gained(),
            Comparison.MoreThan => limit < 0 ? Lost(Comparison.LessThan) : Gained(),
            Comparison.AtMost => limit < 0 ? Lost(Comparison.AtLeast) : Gained(),
            Comparison.LessThan => limit <= 0 ? Lost(Comparison.MoreThan) : Gained(),
            _ => null,
        };

        (string, Comparison, double) Lost(Comparison how) => ("lost", how, Math.Abs(limit));

        (string, Comparison, double) Gained() => ("gained", comparison, limit);
    }

    /// <summary>What a loss asks of the latest result less the earliest: <c>at most</c> is <c>at least</c> of the number below nought.</summary>
    internal static Comparison OfALoss(Comparison comparison) => comparison switch
    {
        Comparison.AtMost => Comparison.AtLeast,
        Comparison.AtLeast => Comparison.AtMost,
        Comparison.LessThan => Comparison.MoreThan,
        Comparison.MoreThan => Comparison.LessThan,
        var other => other,
    };
}
