using Byrelaw.Planning.Chances;
using Byrelaw.Planning.Forecasting;

namespace Byrelaw.Reporting.Plans;

/// <summary>What will come of it, stage by stage, each loss at its own stage.</summary>
internal static class ForecastPart
{
    public static Part Of(Plan plan)
    {
        var origin = PlanHead.Aims(plan).Embryos;
        var missing = plan.Numbers.Reading.Missing;
        var part = new DocumentBuilder().Heading(2, "What will come of it");
        if (plan.Numbers.Forecast is not { } forecast)
        {
            return part.Sentence(plan.Inputs.Donors == 0 ? "Nothing can be forecast: the programme has no donors (or no embryos in the tank)." : "Nothing can be forecast yet.")
                .Sentence(missing.IsEmpty ? "" : $"To go on, the programme would have to assume: {Phrases.And([.. missing.Select(PlanWords.Of)])}.").As("forecast");
        }

        var (atBest, between) = (plan.Numbers.IfAllPass, plan.Numbers.Between);
        var table = new Table(
            atBest is null ? "Over all sessions" : "Over all sessions, with those named", ["stage", "poor (1 in 10 is worse)", "middling", "good (1 in 10 is better)", "average", .. between is null ? (Column[])[] : [$"if {BetweenWords.Share(plan)} of those asked pass"], .. atBest is null ? (Column[])[] : ["if all asked pass"], "rate"]);
        foreach (var stage in forecast.Stages)
        {
            table.Add([
                Wording.Bold(Phrases.Sentence(PlanWords.Of(stage.Stage, origin))), $"{stage.Counts.Quantile(0.1)}", $"{stage.Counts.Quantile(0.5)}", $"{stage.Counts.Quantile(0.9)}",
                ChanceWords.Mean(stage.Counts.Mean), .. between is null ? (Wording[])[] : [AtBest(between, stage.Stage)], .. atBest is null ? (Wording[])[] : [AtBest(atBest, stage.Stage)], stage is { Rate: { } rate, Of: { } of } ? $"{Rate(rate)} of {PlanWords.Short(of)}{(stage.OfFrozen is { } frozen ? $"; {Rate(frozen)} of those from the tank" : "")}" : ""]);
        }

        return part.Sentence(atBest is null ? "" : "Every figure stands twice: with those named, and if all who are asked about pass. Count on the lower one.").Table(table)
            .Sentence(missing.IsEmpty ? "" : $"The chain ends here: to go on, the programme would have to assume {Phrases.And([.. missing.Select(PlanWords.Of)])}.")
            .Sentence(Tank(plan, forecast))
            .Sentence("Rates are uncertain by what stands behind them, and all sessions of a season share them: a poor year is poor in every session.")
            .Picture(ForecastFan.Of(forecast)).As("forecast");
    }

    private static string Tank(Plan plan, Forecast forecast) => (forecast.Thawed, plan.Numbers.Reading.MissingOfTank) switch
    {
        ({ } thawed, _) => $"The tank holds {Numbers.Count(PlanHead.Aims(plan).InTheTank, "frozen embryo", "frozen embryos")}. Recipients that find no fresh one get them, session by session: about {ChanceWords.Mean(thawed.Mean)} "
            + $"{(plan.Numbers.IfAllPass?.Thawed is { } atBest ? $"with those named, {ChanceWords.Mean(atBest.Mean)} if all asked pass. They" : "over the season. They")} are among the transfers. No recipient is got ready for a straw: it loses nothing by waiting.",
        (_, { IsEmpty: false } missing) => $"What the tank holds ({Numbers.Count(PlanHead.Aims(plan).InTheTank, "frozen embryo", "frozen embryos")}) is not counted: the programme would have to assume {Phrases.And([.. missing.Select(one => $"{PlanWords.Of(one)} frozen")])}.",
        _ => "",
    };

    private static string AtBest(Forecast forecast, Stage stage) => forecast.At(stage) is var counts ? $"{ChanceWords.Mean(counts.Mean)} ({counts.Quantile(0.1)} to {counts.Quantile(0.9)})" : "";

    private static string Rate(Rate rate) => rate.IsExact
        ? $"{ChanceWords.Rate(rate.Share)}"
        : $"{ChanceWords.Rate(rate.Share)} (likely {ChanceWords.Rate(rate.Quantile(0.1))} to {ChanceWords.Rate(rate.Quantile(0.9))})";
}
