using Byrelaw.Planning.Forecasting;

namespace Byrelaw.Reporting.Plans;

/// <summary>Whether what is wanted is reached, what holds it back, and what would help.</summary>
internal static class ReachPart
{
    public static Part Of(Plan plan)
    {
        var numbers = plan.Numbers;
        var aims = PlanHead.Aims(plan);
        if (aims.Wants is not { } wants || numbers.Forecast is not { Chance: { } chance } forecast)
        {
            return Part.None;
        }

        var part = new DocumentBuilder().Heading(2, "Is it enough?")
            .Sentence($"Wanted: {PlanWords.Of(wants.What, wants.Count)}, {ChanceWords.Of(wants.Sure)} sure. {(numbers.IfAllPass is { Chance: { } atBest } ? $"With those named: {ChanceWords.Of(chance)} sure; if all asked pass: {ChanceWords.Of(atBest)}" : $"As planned: {ChanceWords.Of(chance)} sure")}. "
                + $"As surely as wished, count on {PlanWords.Of(wants.What, forecast.CountedOn!.Value)}.")
            .Sentence(Limit(forecast))
            .Sentence(Farthest(plan, wants));
        var table = new Table($"What one more of each is worth, and how many more it would take{(numbers.IfAllPass is null ? "" : ", if all asked pass")}", "one more", "brings on average", "chance rises by", "needed, by itself", "to be had");
        foreach (var needed in numbers.Needed)
        {
            var worth = numbers.Worth.FirstOrDefault(one => one.OneMore == needed.Of);
            table.Add(
                Wording.Bold(Phrases.Sentence(PlanWords.Of(needed.Of, aims.Embryos).One)), worth is null ? "" : $"{worth.More:+0.00;-0.00;0}",
                worth is null ? "" : $"{100 * worth.Chance:0.0} points", Number(needed), $"{needed.Room}");
        }

        return part.Table(table).As("reach");
    }

    private static string Number(Needed needed) => needed.More switch
    {
        0 => "none: it is enough",
        { } more => $"{more} more{(needed.CanBeHad ? "" : ", which are not there")}",
        null => $"even {needed.Limit} more are not enough",
    };

    private static string Limit(Forecast forecast) => forecast.Limit switch
    {
        Planning.Forecasting.Bottleneck.Embryos => $"Embryos are what is scarce: about {ChanceWords.Mean(forecast.Idle)} accepted recipients find none.",
        Planning.Forecasting.Bottleneck.Recipients => $"Recipients are what is scarce: about {ChanceWords.Mean(forecast.Surplus)} embryos find none.",
        _ => "Embryos and recipients are scarce about equally.",
    };

    private static string Farthest(Plan plan, Language.Rulebooks.Plans.Want wants) => plan.Numbers.CanBeReached == false && plan.Numbers.Farthest is { } farthest
        ? $"NO PLAN REACHES IT. With every session, donor and recipient there is, it is {ChanceWords.Of(plan.Numbers.SurestChance!.Value)} sure; as surely as wished, count on {PlanWords.Of(wants.What, farthest.CountedOn(wants.Sure))} at most."
        : "";
}
