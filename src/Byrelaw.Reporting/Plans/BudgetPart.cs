namespace Byrelaw.Reporting.Plans;

/// <summary>What it costs, line by line.</summary>
internal static class BudgetPart
{
    public static Part Of(Plan plan)
    {
        if (plan.Numbers.Budget is not { } budget)
        {
            return Part.None;
        }

        var all = plan.Numbers.BudgetIfAllPass;
        var table = new Table($"In {budget.Currency}{(all is null ? "" : ", with those named and if all asked pass")}",
            ["where", "what", "price", "number", "amount", .. all is null ? (Column[])[] : ["number, if all asked pass", "amount, if all asked pass"]]);
        foreach (var line in (all ?? budget).Lines)
        {
            var now = budget.Lines.FirstOrDefault(one => one.Charge.Per == line.Charge.Per && one.Charge.For == line.Charge.For);
            table.Add([
                PlanWords.Of(line.On), Phrases.Sentence(PlanWords.Of(line.Charge)), $"{MoneyWords.Number(line.Charge.Price)} {PlanWords.Each(line.Charge.Per)}",
                ChanceWords.Mean(now?.Number ?? 0), MoneyWords.Number(now?.Amount ?? 0), .. all is null ? (Wording[])[] : [ChanceWords.Mean(line.Number), MoneyWords.Number(line.Amount)]]);
        }

        table.Add([Wording.Bold("Together"), "", "", "", Wording.Bold(BudgetWords.AtLeast(budget) + MoneyWords.Number(budget.Total)), .. all is null ? (Wording[])[] : ["", Wording.Bold(BudgetWords.AtLeast(all) + MoneyWords.Number(all.Total))]]);
        return new DocumentBuilder().Heading(2, "What it costs").Table(table).Bullets(Notes(budget)).Sentence(SharedWords.Of(PlanHead.Aims(plan))).Table(SharedWords.Table(plan))
            .Sentence(all is not null ? $"That is with those named. If all asked pass it comes to {BudgetWords.Total(all)}{MoneyWords.Spread(all.Low, all.High, ", ")}." : "")
            .As("budget");
    }

    private static IEnumerable<string> Notes(Budget budget)
    {
        yield return (MoneyWords.Number(budget.Low) == MoneyWords.Number(budget.High) ? "" : $"In eight seasons of ten {(budget.IsAtLeast ? "what has a price" : "it")} comes to between {MoneyWords.Of(budget.Low, budget.Currency)} and {MoneyWords.Of(budget.High, budget.Currency)}; ")
            + $"{MoneyWords.Of(budget.Fixed, budget.Currency)} of it is spent whatever happens.";
        if (!budget.NotPriced.IsEmpty)
        {
            yield return $"Not in it, for no price is given: {BudgetWords.Missing(budget)}. A price that is not there is not a price of nothing: every total is what it comes to at least.";
        }

        if (budget.Limit is { } limit)
        {
            yield return $"The budget is {MoneyWords.Of(limit, budget.Currency)}: "
                + (budget.ChanceWithinLimit is { } chance ? $"{BudgetWords.Sure(chance)} that the total stays within it." : "whether the total stays within it cannot be said while prices are missing.");
        }

        var each = new[]
        {
            (budget.Each.Transfer, "embryo transferred"), (budget.Each.Pregnancy, "pregnancy"), (budget.Each.LiveCalf, "live calf"), (budget.Each.LiveHeifer, "live heifer calf"),
        };
        if (each.Any(one => one.Item1 is not null))
        {
            yield return $"For each, all costs taken together: {Phrases.And([.. each.Where(one => one.Item1 is not null).Select(one => $"{BudgetWords.AtLeast(budget)}{MoneyWords.Of(one.Item1!.Value, budget.Currency)} for each {one.Item2}")])}.";
        }

        if (budget.Lost is { } lost)
        {
            yield return $"Not paid, but lost: about {ChanceWords.Mean(lost.Number)} recipients are got ready and not pregnant, and calve a cycle later: {MoneyWords.Of(lost.Amount, budget.Currency)}.";
        }
    }
}
