using Byrelaw.Planning.Sheets;
using Byrelaw.Reporting.Sheets;

namespace Byrelaw.Reporting.Plans;

/// <summary>The whole plan on one page, for those who work with it.</summary>
internal static class PlanPage
{
    public static Page Of(Plan plan, ImmutableArray<MorningSheet> sheets)
    {
        var title = $"Plan: {PlanHead.Name(plan)}";
        return new Page("index", title, PlanHead.Of(plan),
        [
            Top(plan, title),
            SessionsPart.Of(plan),
            VisitsPart.Of(plan),
            PastPart.Of(plan),
            DecisionsPart.Of(plan),
            MorningsPart.Of(sheets),
            TasksPart.Of(plan),
            CalendarPart.Of(plan),
            SeasonPart.Of(plan),
            RecipientsPart.Of(plan),
            MethodsPart.Of(plan),
            CarriersPart.Of(plan),
            BalancePart.Of(plan),
            Ready(plan),
            ForecastPart.Of(plan),
            ReachPart.Of(plan),
            MattersPart.Of(plan),
            BudgetPart.Of(plan),
            YardsticksPart.Of(plan),
            AssumptionsPart.Of(plan),
            Fingerprints.Of(plan.Draft),
            CautionsPart.Of(),
        ]);
    }

    private static Part Top(Plan plan, string title)
    {
        var part = new DocumentBuilder().Heading(1, title);
        if (StopWords.Of(plan) is { } stop)
        {
            part.Framed(Frame.Stop, stop);
        }

        DangerPart.Add(part, plan);
        part.Bullets(OpenSheetWords.Of(plan.Draft.Herd));
        if (!plan.Sessions.IsEmpty)
        {
            part.Table(SessionsTable.Of(plan));
        }

        part.Bullets(SessionLines.Of(plan).Concat(Summary.Of(plan)));
        part.Bullets(DoNext(plan));
        part.Sentence($"For the farmer: {Wording.Link("what to expect, on one page", "expectations.md")}. For a calendar program: {Wording.Link("calendar.ics", "calendar.ics")}; importing it again moves its entries.");
        return part.As("top");
    }

    private static IEnumerable<Wording> DoNext(Plan plan) => TasksPart.Next(plan).Take(5)
        .Select<TaskRow, Wording>(row => $"Do next: {Wording.Bold(row.Name)}, {(row.First.Length == 0 ? "" : $"from {row.First} ")}by {row.Start}: {row.For}.");

    private static Part Ready(Plan plan) => plan.ReadyByDate is { } ready
        ? new DocumentBuilder().Heading(2, "Recipients ready by date").Picture(ReadyByDatePicture.Of(ready, plan.Calendar)).As("ready")
        : Part.None;
}
