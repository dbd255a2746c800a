using Byrelaw.Planning.Recipients;

namespace Byrelaw.Reporting.Plans;

/// <summary>Every method that can still start, side by side.</summary>
internal static class MethodsPart
{
    public static Part Of(Plan plan)
    {
        var currency = plan.Numbers.Budget?.Currency ?? PlanHead.Aims(plan).Budget?.Currency ?? "";
        var table = new Table("Every method that can still start", "method", "for sessions", "sure", "to ask", "of those treated or watched, used", "each accepted one costs", "each live heifer calf costs");
        foreach (var one in plan.SideBySide)
        {
            table.Add(
                Wording.Bold(one.Method.Name + (one.IsChosen ? "" : " (not chosen)")), Phrases.And([.. one.Sessions.Select(session => $"{session}")]), $"{one.Sure}", $"{one.ToAsk}",
                ChanceWords.Rate(one.Used.Share), one.CostPerAccepted is { } accepted ? MoneyWords.Of(accepted, currency) : "not said", Heifer(one, currency));
        }

        return table.IsEmpty ? Part.None : new DocumentBuilder().Heading(2, "Methods side by side").Table(table)
            .Sentence("Sure and to ask are counted for each method by itself, over its sessions. A live heifer calf costs her embryo and transfer, and the treatment of all it takes to have one accepted, over the chance that a transfer "
                + "gives her. A method without a price is not ranked. Which is given is for a licensed vet to order.").As("side-by-side");
    }

    private static string Heifer(MethodBeside one, string currency) => one.CostPerLiveHeifer is { } heifer ? (one.IsAtLeast ? "at least " : "") + MoneyWords.Of(heifer, currency) : "not said";
}
