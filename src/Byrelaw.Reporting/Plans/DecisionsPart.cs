using Byrelaw.Planning.LeadTimes;

namespace Byrelaw.Reporting.Plans;

/// <summary>Go or no-go: who decides by when, what is spent by then, what becomes of the treated if it is stopped, and what was said.</summary>
internal static class DecisionsPart
{
    public static Part Of(Plan plan)
    {
        var decisions = DecisionWords.Of(plan).ToList();
        if (decisions.Count == 0)
        {
            return Part.None;
        }

        var table = new Table("Go or no-go, by the day", "by", "what", "who decides", "spent by then", "stopping then still costs", "if it is stopped", "said");
        foreach (var task in decisions)
        {
            table.Add(Wording.Bold(Dates.Long(task.Due)), TaskWords.Name(task), Phrases.And([.. task.Task.DecidedBy]), Spent(plan, task), Still(plan, task), task.Task.IfStopped!, DecisionWords.Said(plan, task));
        }

        return new DocumentBuilder().Heading(2, "Go or no-go")
            .Sentence("Before money is spent that nothing brings back somebody says whether to go on. A device that is in comes out, whatever is decided.")
            .Table(table).Bullets(DecisionWords.Stopped(plan)).As("decisions");
    }

    private static string Spent(Plan plan, TaskDates task) => SpentBy.Of(plan, task.Session, task.Due) is { } spent ? Amount(spent.Money, spent.IsAll) : NoPrice;

    private static string Still(Plan plan, TaskDates task) => StillCosts.Of(plan, task.Session, task.Due) is { } still
        ? Amount(still.Money, still.IsAll) + (still.Lost is { } lost ? $"; and {MoneyWords.Of(lost)} not earned, for a cycle lost" : "") : NoPrice;

    private static string Amount(Money money, bool isAll) => money.Amount >= 0.5 ? $"about {MoneyWords.Of(money)}{(isAll ? "" : " at least")}" : isAll ? "nothing" : "nothing that has a price";

    private const string NoPrice = "no price is given";
}
