namespace Byrelaw.Language.Binding.Plans;

/// <summary>Shares, money and whole numbers of a plan.</summary>
internal static class NumberBinding
{
    /// <summary>A count and the share written beside it may differ by rounding.</summary>
    private const double Rounding = 0.0051;

    /// <summary>A share from 0 to 100% with its evidence; null, and a problem, for anything else.</summary>
    public static Share? Share(this Context context, ShareSyntax syntax) => context.Share(syntax.Percent, syntax.Evidence.RemoveAll(one => one is OnDaySyntax));

    /// <summary>The same from its parts.</summary>
    public static Share? Share(this Context context, NumberSyntax percent, ImmutableArray<EvidenceSyntax> evidence)
    {
        if (percent.Value is < 0 or > 100)
        {
            return context.Fail<Share>(PlanProblems.NotAShare(percent.Span));
        }

        var share = new Share(percent.Value / 100, null, null, percent.Span);
        if (evidence.Length > 1)
        {
            return context.Fail<Share>(PlanProblems.EvidenceDoesNotFit(evidence[1].Span, "a share rests on one count or one weight"));
        }

        return evidence.FirstOrDefault() switch
        {
            null => share,
            WeightSyntax weight => weight.Animals.Value is > 0 and <= 1e6
                ? share with { Opinion = weight.Animals.Value }
                : context.Fail<Share>(PlanProblems.EvidenceDoesNotFit(weight.Span, "a weight is a number of animals above 0")),
            CountedSyntax counted => context.Counted(share, counted),
            var other => context.Fail<Share>(PlanProblems.EvidenceDoesNotFit(other.Span, "a share has `, weight 40` or `, from 36 of 80`, and only a number has a `spread`")),
        };
    }

    /// <summary>An amount of money; null, and a problem, where it is none.</summary>
    public static Money? Money(this Context context, MoneySyntax syntax) => context.Money(syntax.Amount, syntax.Currency);

    /// <summary>The same from its parts.</summary>
    public static Money? Money(this Context context, NumberSyntax amount, UnitSyntax currency)
    {
        if (amount.Value < 0)
        {
            return context.None<Money>(PlanProblems.NotACount(amount.Span, "an amount of 0 or more"));
        }

        return currency.Text.Length == 3 && currency.Text.All(char.IsAsciiLetterUpper)
            ? new Money(amount.Value, currency.Text)
            : context.None<Money>(PlanProblems.CurrencyMissing(currency.Span));
    }

    /// <summary>A whole number within bounds; null, and a problem, for another.</summary>
    public static int? Whole(this Context context, NumberSyntax number, int least, int most, string what) =>
        number.Value >= least && number.Value <= most && number.Value == Math.Floor(number.Value)
            ? (int)number.Value
            : context.None<int>(PlanProblems.NotACount(number.Span, $"a whole number from {least} to {most}: {what}"));

    /// <summary>A number of whole days; null, and a problem, for another length.</summary>
    public static int? WholeDays(this Context context, DurationSyntax length, int least, int most, string what) =>
        length.Unit is TimeUnit.Days or TimeUnit.Weeks && context.Whole(length.Count, 0, most, what) is { } count
            ? count * (length.Unit == TimeUnit.Weeks ? 7 : 1) is var days && days >= least && days <= most
                ? days : context.None<int>(PlanProblems.NotACount(length.Span, $"{what}, from {least} to {most} days"))
            : length.Unit is TimeUnit.Days or TimeUnit.Weeks ? null : context.None<int>(PlanProblems.NotACount(length.Span, $"{what} in days or weeks"));

    private static Share? Counted(this Context context, Share share, CountedSyntax counted)
    {
        var of = context.Whole(counted.Of, 1, 1_000_000, "how many were counted");
        var hits = context.Whole(counted.Hits, 0, 1_000_000, "for how many it came true");
        if (of is not { } all || hits is not { } some)
        {
            return null;
        }

        if (some > all)
        {
            return context.Fail<Share>(PlanProblems.EvidenceDoesNotFit(counted.Span, "no more can come true than were counted")
                .Or(new Proposal(counted.Hits.Span.To(counted.Of.Span), $"{all} of {some}")));
        }

        return Math.Abs((double)some / all - share.Written) > Rounding
            ? context.Fail<Share>(PlanProblems.CountDisagrees(counted.Span, share.Span, some, all))
            : share with { Counted = new Counting(some, all, counted.What?.Text) };
    }
}
