namespace Byrelaw.Reporting.Plans;

/// <summary>Whose money it is.</summary>
internal static class SharedWords
{
    /// <summary><c>Costs are shared: owner 50% and sharemilker 50%; of treatments owner 100%.</c>; empty where nothing is said.</summary>
    public static string Of(Aims aims) => aims.Shared.IsEmpty ? ""
        : $"Costs are shared: {string.Join("; ", aims.Shared.OrderBy(one => one.Kind is null ? -1 : (int)one.Kind).Select(one => $"{Kind(one.Kind)}{Phrases.And([.. one.Shares.Select(share => $"{share.Who} {ChanceWords.Rate(share.Share)}")])}"))}.";

    private static string Kind(SharedCosts? kind) => kind switch
    {
        SharedCosts.Semen => "of semen ",
        SharedCosts.Treatments => "of treatments and samples ",
        SharedCosts.Transfers => "of transfers and visits ",
        _ => "",
    };

    /// <summary>What each pays; nothing where nothing is shared.</summary>
    public static Table Table(Plan plan)
    {
        var (budget, all) = (plan.Numbers.Budget!, plan.Numbers.BudgetIfAllPass);
        var shared = PlanHead.Aims(plan).Shared;
        var table = new Table($"Who pays, in {budget.Currency}", ["who", all is null ? "pays" : "with those named", .. all is null ? (Column[])[] : ["if all asked pass"]]);
        var now = PaidBy.Of(shared, budget);
        foreach (var one in PaidBy.Of(shared, all ?? budget))
        {
            var paid = now.FirstOrDefault(other => other.Who == one.Who)?.Amount ?? 0;
            table.Add([Wording.Bold(one.Who ?? "not shared out"), BudgetWords.AtLeast(budget) + MoneyWords.Number(paid), .. all is null ? (Wording[])[] : [BudgetWords.AtLeast(all) + MoneyWords.Number(one.Amount)]]);
        }

        return table;
    }
}
