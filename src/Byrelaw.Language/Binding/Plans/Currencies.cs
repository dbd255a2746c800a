namespace Byrelaw.Language.Binding.Plans;

/// <summary>All money of one plan is in one currency: nothing is converted.</summary>
internal static class Currencies
{
    /// <summary>Tells of every amount that is in another currency than the budget, or than the first amount.</summary>
    public static void Check(Aims? aims, PlanStatements plans, SourceSpan? programme, IReadOnlyList<RuleFile> files)
    {
        var amounts = new List<(Money Amount, SourceSpan Span)>();
        if (aims?.Budget is { } budget && programme is { } place)
        {
            amounts.Add((budget, place));
        }

        amounts.AddRange(plans.Costs.Select(line => (line.Amount, line.Span)));
        amounts.AddRange(plans.Methods.Where(method => method.Cost is not null).Select(method => (method.Cost!.Value, method.Span)));
        amounts.AddRange(plans.Tasks.Where(task => task.Cost is not null).Select(task => (task.Cost!.Amount, task.Span)));
        amounts.AddRange(plans.Yardsticks.Where(one => one.Cost is not null).Select(one => (one.Cost!.Value, one.Span)));
        foreach (var (amount, span) in amounts.Skip(1).Where(amount => amount.Amount.Currency != amounts[0].Amount.Currency))
        {
            PlanBinder.ProblemsOf(files, span).Add(PlanProblems.TwoCurrencies(
                Written(files, span), amount.Currency, amounts[0].Amount.Currency, Written(files, amounts[0].Span)));
        }
    }

    /// <summary>Where the amount of a statement is written.</summary>
    private static SourceSpan Written(IReadOnlyList<RuleFile> files, SourceSpan statement)
    {
        var block = files.First(file => file.Source == statement.File).Blocks.First(block => block.Span == statement);
        return (block.First<BudgetLine>()?.Amount ?? block.First<CostsLine>()?.Amount)?.Span
            ?? (block.Head as YardstickLine)?.Amount?.Span
            ?? (block.Head is AssumeLine { Unit: { } currency } line ? line.Value.Span.To(currency.Span) : statement);
    }
}
