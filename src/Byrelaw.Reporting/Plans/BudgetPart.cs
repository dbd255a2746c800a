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

        var table = new Table($"In {budget.Currency}", "where", "what", "price", "number", "amount");
        foreach (var line in budget.Lines)
        {
            table.Add(
                PlanWords.Of(line.On), Phrases.Sentence(PlanWords.Of(line.Charge)),
                $"{MoneyWords.Number(line.Charge.Price)} {PlanWords.Each(line.Charge.Per)}", ChanceWords.Mean(line.Number), MoneyWords.Number(line.Amount));
        }

        table.Add(Wording.Bold("Together"), "", "", "", Wording.Bold(MoneyWords.Number(budget.Total)));
        return new DocumentBuilder().Heading(2, "What it costs").Table(table).Bullets(Notes(budget)).As("budget");
    }

    private static IEnumerable<string> Notes(Budget budget)
    {
        yield return $"In eight seasons of ten it comes to between {MoneyWords.Of(budget.Low, budget.Currency)} and {MoneyWords.Of(budget.High, budget.Currency)}; {MoneyWords.Of(budget.Fixed, budget.Currency)} of it is spent whatever happens.";
        if (!budget.NotPriced.IsEmpty)
        {
            yield return $"Not in it, for no price is given: {Phrases.And([.. budget.NotPriced.Select(PlanWords.Of)])}.";
        }

        if (budget.Limit is { } limit)
        {
            yield return $"The budget is {MoneyWords.Of(limit, budget.Currency)}: the total stays within it with {ChanceWords.Of(budget.ChanceWithinLimit!.Value)} certainty.";
        }

        var each = new[]
        {
            (budget.Each.Transfer, "embryo transferred"), (budget.Each.Pregnancy, "pregnancy"), (budget.Each.LiveCalf, "live calf"), (budget.Each.LiveHeifer, "live heifer calf"),
        };
        if (each.Any(one => one.Item1 is not null))
        {
            yield return $"For each, all costs taken together: {Phrases.And([.. each.Where(one => one.Item1 is not null).Select(one => $"{MoneyWords.Of(one.Item1!.Value, budget.Currency)} for each {one.Item2}")])}.";
        }

        if (budget.Lost is { } lost)
        {
            yield return $"Not paid, but lost: about {ChanceWords.Mean(lost.Number)} recipients are got ready and not pregnant, and calve a cycle later: {MoneyWords.Of(lost.Amount, budget.Currency)}.";
        }
    }
}
