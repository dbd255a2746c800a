using Byrelaw.Planning.Carrying;

namespace Byrelaw.Reporting.Plans;

/// <summary>Who carries: cows in milk, dry cows and heifers side by side.</summary>
internal static class CarriersPart
{
    public static Part Of(Plan plan)
    {
        if (plan.WhoCarries is not { } who)
        {
            return Part.None;
        }

        var bought = who.Sorts.Select(one => one.Bought).FirstOrDefault(one => one is not null);
        var table = new Table(
            "Cows in milk, dry cows and heifers of this herd",
            ["recipients", "sure", "to ask", "pregnant of those transferred to", "resting on", "each live calf costs", .. bought is null ? (Column[])[] : [Heading(bought)]]);
        foreach (var one in who.Sorts)
        {
            table.Add([
                Wording.Bold(Phrases.Sentence(CarrierWords.Beside(one.Carrier))), $"{one.Sure}", $"{one.ToAsk}", one.Pregnant?.Share is { } share ? ChanceWords.Rate(share.Value) : "not said", RestingOn(one), Cost(plan, one),
                .. bought is null ? (Wording[])[] : [Brings(one.Bought)]]);
        }

        return new DocumentBuilder().Heading(2, "Who carries").Table(table)
            .Sentence("Each animal counts once, over all sessions. A dry cow is one dried off since her last calving, or bought dry.")
            .Sentence(who.NotKnown == 0 ? "" : $"Of {who.NotKnown} more it is not known whether they have calved, or whether they are dry.")
            .Sentence(who.Method is null ? "" : $"What a calf costs is reckoned with {who.Method}: embryo, transfer, and the treatment of all it takes to have one accepted. What a bought animal costs is not in it.")
            .Sentence(bought is null ? "" : "An animal that is bought in fills a place only once she passes every check, as any other; what she brings is told as if all who are asked about pass.").As("carriers");
    }

    /// <summary>For the farmer's page; empty where it makes no difference who carries, or nothing has a price.</summary>
    public static string Cost(Plan plan)
    {
        var there = plan.WhoCarries?.Sorts.Where(one => one.Sure + one.ToAsk > 0 && one.CostPerLiveCalf is not null).ToList() ?? [];
        return there.Select(one => Cost(plan, one)).Distinct().Count() < 2 ? ""
            : $" A live calf costs {Phrases.And([.. there.Select(one => $"{Cost(plan, one)} with {CarrierWords.Beside(one.Carrier)}")])}, without visits.";
    }

    private static string RestingOn(CarrierBeside one) => one.Pregnant is not { } line ? ""
        : (line.In == one.Carrier ? "" : $"{(line.In is { } all ? $"all {CarrierWords.Of(all)}" : "all recipients")}: ") + AssumptionsPart.Evidence(line) + ((line.Source ?? line.Because) is { } source ? $"; {source}" : "");

    private static string Cost(Plan plan, CarrierBeside one) =>
        one.CostPerLiveCalf is { } cost ? (one.IsAtLeast ? "at least " : "") + MoneyWords.Of(cost, plan.Numbers.Budget?.Currency ?? PlanHead.Aims(plan).Budget?.Currency ?? "") : "not said";

    private static string Heading(BoughtIn bought) => bought.Fills
        ? $"{Numbers.Count(bought.Animals, "more of them, for the place that stays empty, would bring", "more of them, for the places that stay empty, would bring")}" : "one more of them at each session would bring";

    private static string Brings(BoughtIn? bought) => bought is null ? "not said"
        : $"{ChanceWords.Mean(bought.More)} more of what is wanted" + (bought.Chance is { } chance ? $"; the chance rises by {Numbers.Count((int)Math.Round(100 * chance), "point", "points")}" : "");
}
