using Byrelaw.Planning.Budgeting;

namespace Byrelaw.Reporting.Plans;

/// <summary>What is said of a total in several places: a price that is not there is never read as nothing to pay.</summary>
internal static class BudgetWords
{
    /// <summary><c>about 12,350 NZD</c>; where some of it has no price, <c>at least</c>.</summary>
    public static string Total(Budget budget) => budget switch
    {
        { IsAtLeast: true, Total: < 0.5 } => "nothing that has a price",
        { IsAtLeast: true } => $"at least {MoneyWords.Of(budget.Total, budget.Currency)}",
        _ => $"about {MoneyWords.Of(budget.Total, budget.Currency)}",
    };

    /// <summary><c>at least </c> before an amount that leaves out what has no price; else nothing.</summary>
    public static string AtLeast(Budget budget) => budget.IsAtLeast ? "at least " : "";

    /// <summary><c>a sample and a day of keep</c>: what has no price.</summary>
    public static string Missing(Budget budget) => Phrases.And([.. budget.NotPriced.Select(PlanWords.Of)]);

    /// <summary><c>it is as good as certain</c>; <c>it is 85% sure</c>.</summary>
    public static string Sure(double chance) => $"it is {(chance >= AsGoodAsCertain ? "as good as certain" : $"{ChanceWords.Of(chance)} sure")}";

    private const double AsGoodAsCertain = 0.995;

    /// <summary>Whether it stays within what may be spent; empty where nothing is said of that.</summary>
    public static string Within(Budget budget) => budget switch
    {
        { Limit: null } => "",
        { Limit: { } limit, ChanceWithinLimit: { } chance } => $"{Sure(chance)} to stay within the budget of {MoneyWords.Number(limit)}",
        { Limit: { } limit } => $"whether it stays within the budget of {MoneyWords.Number(limit)} cannot be said while prices are missing",
    };
}
