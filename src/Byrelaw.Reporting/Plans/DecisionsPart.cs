using Byrelaw.Planning.LeadTimes;

namespace Byrelaw.Reporting.Plans;

/// <summary>Go or no-go: who decides by when, what is spent by then, what becomes of the treated if it is stopped, and what was said.</summary>
internal static class DecisionsPart
{
    public static Part Of(Plan plan)
    {
        var decisions = plan.Calendar.Tasks.Where(task => task.Task.IsDecision).OrderBy(task => task.Due).ToList();
        if (decisions.Count == 0)
        {
            return Part.None;
        }

        var table = new Table("Go or no-go, by the day", "by", "what", "who decides", "spent by then", "if it is stopped", "said");
        foreach (var task in decisions)
        {
            table.Add(Wording.Bold(Dates.Long(task.Due)), TaskWords.Name(task), Phrases.And([.. task.Task.DecidedBy]), Spent(plan, task), task.Task.IfStopped!, DecisionWords.Said(plan, task));
        }

        return new DocumentBuilder().Heading(2, "Go or no-go")
            .Sentence("Before money is spent that nothing brings back somebody says whether to go on. A device that is in comes out, whatever is decided.")
            .Table(table).Bullets(DecisionWords.Stopped(plan)).As("decisions");
    }

    private static string Spent(Plan plan, TaskDates task) => SpentBy.Of(plan, task.Session, task.Due) is { } spent ? spent.Money.Amount > 0 ? $"about {MoneyWords.Of(spent.Money.Amount, spent.Money.Currency)}{(spent.IsAll ? "" : " at least")}" : "nothing that has a price" : "no price is given";
}
