using Byrelaw.Planning.Seasons;

namespace Byrelaw.Reporting.Plans;

/// <summary>Recipients are treated before embryos are counted: too many stand idle, too few leave embryos over.</summary>
internal static class BalancePart
{
    public static Part Of(Plan plan)
    {
        if (plan.Numbers is not { Balance: { } balance, InVain: { } inVain })
        {
            return Part.None;
        }

        var planned = plan.Sessions is [{ Wanted: { } wanted }, ..] ? wanted : balance.Best.Animals;
        var currency = plan.Numbers.Budget?.Currency ?? PlanHead.Aims(plan).Budget?.Currency ?? "";
        var table = new Table("At one session, by the method liked best", "treated", "embryos left over", "recipients left over", "spent in vain");
        foreach (var point in Around(balance, planned))
        {
            table.Add(
                point == balance.Best ? Wording.Bold($"{point.Animals} (best)") : $"{point.Animals}{(point.Animals == planned ? " (planned)" : "")}",
                $"{ChanceWords.Of(point.ChanceOfSurplus)} likely, {ChanceWords.Mean(point.Surplus)} on average",
                $"{ChanceWords.Of(point.ChanceOfIdle)} likely, {ChanceWords.Mean(point.Idle)} on average",
                inVain.ByMoney ? MoneyWords.Of(point.InVain, currency) : ChanceWords.Mean(point.InVain));
        }

        return new DocumentBuilder().Heading(2, "Embryos and recipients together")
            .Sentence($"Recipients are treated before anyone knows how many embryos there will be. {Costs(inVain, currency)} The least is spent in vain with {Numbers.Count(balance.Best.Animals, "animal", "animals")} treated.")
            .Table(table)
            .As("balance");
    }

    private static string Costs(InVain inVain, string currency)
    {
        if (inVain.ByMoney)
        {
            return $"A recipient that finds no embryo has cost about {MoneyWords.Of(inVain.Idle!.Value, currency)}, an embryo that finds no recipient about {MoneyWords.Of(inVain.Surplus!.Value, currency)}."
                + (inVain.NotPriced.IsEmpty ? "" : $" No price is given for {Phrases.And([.. inVain.NotPriced.Select(PlanWords.Of)])}, so that is not in it.");
        }

        var why = inVain switch
        {
            { Idle: null, Surplus: null } => "The programme gives no prices",
            { Idle: null } => $"The programme does not say what it costs to have a recipient ready by {inVain.NotPriced.First(one => one.Per == CostUnit.AnimalTreated).For}",
            { Surplus: null } => $"The programme does not say what an embryo costs ({Phrases.And([.. inVain.NotPriced.Where(one => one.Per != CostUnit.AnimalTreated).Select(PlanWords.Of)])})",
            _ => "By its prices neither costs anything",
        };
        return $"{why}, so an idle recipient counts as much as an embryo left over.";
    }

    /// <summary>The best number, the planned one and some on either side.</summary>
    private static IEnumerable<BalancePoint> Around(Balance balance, int planned)
    {
        var best = balance.Best.Animals;
        int[] shown = [best - 10, best - 5, best, best + 5, best + 10, planned];
        return balance.Points.Where(point => shown.Contains(point.Animals));
    }
}
