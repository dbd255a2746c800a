namespace Byrelaw.Planning.Budgeting;

/// <summary>Works out what a forecast programme costs.</summary>
public static class Budgeter
{
    /// <summary>The budget.</summary>
    /// <param name="forecast">Of the sessions as planned.</param>
    /// <param name="charges">All that is paid for, in one currency.</param>
    /// <param name="fitToFreeze">The share of surplus embryos that is frozen; null where they are not.</param>
    /// <param name="currency">Three capital letters.</param>
    /// <param name="limit">What may be spent; null where nothing is said.</param>
    /// <param name="notPriced">What no price is given for.</param>
    public static Budget AddUp(Forecast forecast, ImmutableArray<Charge> charges, Rate? fitToFreeze, string currency, double? limit, params ImmutableArray<NotPriced> notPriced)
    {
        var lines = Lines(forecast, charges, fitToFreeze);
        var total = lines.Sum(line => line.Amount);
        var range = MoneyRange.Of(forecast, lines, fitToFreeze);
        var lost = charges.Where(charge => charge.Per == CostUnit.LostCycle)
            .Select(charge => new ExpectedCharge(charge, SpentOn.Pregnancies, Number(forecast, charge, fitToFreeze))).FirstOrDefault();
        return new(
            currency, lines, range.Quantile(0.1), range.Quantile(0.9),
            new(Each(Stage.Transfers), Each(Stage.Pregnant), Each(Stage.Alive), Each(Stage.Heifers)),
            limit, limit is { } most && notPriced.IsEmpty ? range.AtMost(most) : null, lost, notPriced);

        double? Each(Stage stage) => Mean(forecast, stage) is > 0 and var number ? total / number : null;
    }

    /// <summary>Only the lines with what to expect of each, without the range: quick enough for every visit that is compared.</summary>
    /// <param name="forecast">Of the sessions.</param>
    /// <param name="charges">All that is paid for.</param>
    /// <param name="fitToFreeze">The share of surplus embryos that is frozen; null where they are not.</param>
    public static ImmutableArray<ExpectedCharge> Lines(Forecast forecast, ImmutableArray<Charge> charges, Rate? fitToFreeze) =>
    [
        .. charges.Where(charge => charge.Per != CostUnit.LostCycle)
            .Select(charge => new ExpectedCharge(charge, On(charge.Per), Number(forecast, charge, fitToFreeze))),
    ];

    private static double Number(Forecast forecast, Charge charge, Rate? fitToFreeze) => charge.Number ?? charge.Per switch
    {
        CostUnit.Programme => 1,
        CostUnit.Collection => Mean(forecast, Stage.Collections),
        CostUnit.Embryo => Mean(forecast, Stage.Embryos),
        CostUnit.EmbryoFrozen => forecast.Surplus * (fitToFreeze?.Share ?? 0),
        CostUnit.Transfer or CostUnit.EmbryoTransferred => Mean(forecast, Stage.Transfers),
        CostUnit.Pregnancy => Mean(forecast, Stage.Pregnant),
        CostUnit.LostCycle => Mean(forecast, Stage.Transfers) + forecast.Idle - Mean(forecast, Stage.Pregnant),
        _ => throw new ArgumentException($"How many {charge.Per} there are must be said.", nameof(charge)),
    };

    private static double Mean(Forecast forecast, Stage stage) =>
        forecast.Stages.FirstOrDefault(one => one.Stage == stage)?.Counts.Mean ?? 0;

    private static SpentOn On(CostUnit per) => per switch
    {
        CostUnit.Programme => SpentOn.TheProgramme,
        CostUnit.AnimalTreated or CostUnit.Sample or CostUnit.DayOfKeep => SpentOn.GettingReady,
        CostUnit.Collection or CostUnit.Embryo or CostUnit.EmbryoFrozen => SpentOn.Embryos,
        CostUnit.Transfer or CostUnit.EmbryoTransferred or CostUnit.Visit => SpentOn.Transfers,
        _ => SpentOn.Pregnancies,
    };
}
