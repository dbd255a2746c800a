using Byrelaw.Planning.Forecasting;

namespace Byrelaw.Reporting.Plans;

/// <summary>One page that a farmer reads: what is wanted, what must be true by when, what to expect, what it costs, what to beware of.</summary>
internal static class ExpectationsPage
{
    private const int MostDays = 14;

    public static Page Of(Plan plan)
    {
        var title = $"What to expect: {PlanHead.Name(plan)}";
        return new Page("expectations", title, PlanHead.Of(plan),
        [
            new DocumentBuilder().Heading(1, title).As("top"),
            new DocumentBuilder().Heading(2, "What is wanted").Sentence(Objective(plan)).Bullets(Summary.Of(plan)).As("wanted"),
            ByWhen(plan),
            Outcomes(plan),
            Cost(plan),
            new DocumentBuilder().Heading(2, "Beware").Bullets(Cautions(plan)).As("cautions"),
        ]);
    }

    private static string Objective(Plan plan)
    {
        var aims = PlanHead.Aims(plan);
        var agreed = aims.Agreement is { } agreement ? $" Agreed by {Phrases.And([.. agreement.By])} on {Dates.Long(agreement.On)}." : "";
        return (aims.Wants is { } wants ? $"{Phrases.Sentence(PlanWords.Of(wants.What, wants.Count))}, {ChanceWords.Of(wants.Sure)} sure"
                + (aims.Budget is { } budget ? $", for no more than {MoneyWords.Of(budget)}." : ".") : "The programme does not say what is wanted.") + agreed + (aims.Shared.IsEmpty ? "" : " " + SharedWords.Of(aims));
    }

    private static Part ByWhen(Plan plan)
    {
        var days = TasksPart.Rows(plan).Select(row => (Day: row.Last, What: $"{row.Name}: {row.For}"))
            .Concat(DecisionWords.Of(plan).Where(task => task is { IsDone: false, IsPast: false }).Select(task => (Day: task.LastStart, What: $"{TaskWords.Name(task)}: {TaskWords.For(task)}")))
            .Concat(plan.Calendar.Entries.Where(entry => entry.Kind is EntryKind.Collection or EntryKind.Transfer or EntryKind.CleanTime && entry.To >= plan.Today)
                .Select(entry => (Day: entry.From, What: EntryWords.What(entry, PlanHead.Aims(plan)))))
            .OrderBy(line => line.Day).ToList();
        return days.Count == 0 ? Part.None : new DocumentBuilder().Heading(2, "What must be true by when")
            .Bullets(days.Take(MostDays).Select<(LocalDate Day, string What), Wording>(line => $"{Wording.Bold(Dates.Long(line.Day))}: {line.What}"))
            .Sentence(days.Count > MostDays ? $"{days.Count - MostDays} more stand in the plan." : "")
            .As("when");
    }

    private static Part Outcomes(Plan plan)
    {
        if (plan.Numbers.Forecast is not { } forecast)
        {
            return Part.None;
        }

        var part = new DocumentBuilder().Heading(2, "What to expect");
        var (named, atBest) = (plan.Sessions.Any(session => !session.Named.IsEmpty), plan.Numbers.IfAllPass);
        if (atBest is null || named)
        {
            part.Sentence(atBest is null ? "" : "With those named so far:").Bullets(Seasons(plan, forecast));
        }

        if (atBest is not null)
        {
            part.Sentence(named ? "If all who are asked about pass:" : "Nobody is named yet, so nothing can be counted on. If all who are asked about pass:").Bullets(Seasons(plan, atBest));
        }

        return part.Picture(ForecastFan.Of(named ? forecast : atBest ?? forecast)).As("outcomes");
    }

    private static IEnumerable<Wording> Seasons(Plan plan, Forecast forecast)
    {
        var origin = PlanHead.Aims(plan).Embryos;
        var shown = forecast.Stages.Where(stage => stage.Stage is Stage.Embryos or Stage.Transfers or Stage.Pregnant or Stage.Alive or Stage.Heifers).ToList();
        return new[] { ("In a poor season (one in ten is worse)", 0.1), ("In a middling season", 0.5), ("In a good season (one in ten is better)", 0.9) }
            .Select<(string Name, double Share), Wording>(season => $"{Wording.Bold(season.Name + ":")} {Phrases.And([.. shown.Select(stage => $"{stage.Counts.Quantile(season.Share)} {PlanWords.Of(stage.Stage, origin)}")])}.");
    }

    private static Part Cost(Plan plan) => plan.Numbers.Budget is not { } budget ? Part.None : new DocumentBuilder().Heading(2, "What it costs")
        .Sentence($"{Phrases.Sentence(BudgetWords.Total(budget))}{(plan.Numbers.BudgetIfAllPass is null ? "" : " with those named so far")}{(budget.IsAtLeast ? "" : MoneyWords.Spread(budget.Low, budget.High, "; "))}. "
            + $"{MoneyWords.Of(budget.Fixed, budget.Currency)} of it is spent even if nothing comes of it."
            + (budget.Each.LiveHeifer is { } heifer ? $" That is {BudgetWords.AtLeast(budget)}{MoneyWords.Of(heifer, budget.Currency)} for each live heifer calf." : "")
            + CarriersPart.Cost(plan)
            + (budget.NotPriced.IsEmpty ? "" : $" Not in it, for no price is given: {BudgetWords.Missing(budget)}.")
            + (plan.Numbers.BudgetIfAllPass is not { } all ? "" : $" If all who are asked about pass: {BudgetWords.Total(all)}{(all.IsAtLeast ? "" : MoneyWords.Spread(all.Low, all.High, "; "))}."))
        .As("cost");

    private static IEnumerable<string> Cautions(Plan plan) =>
        plan.Calendar.Entries.SelectMany(entry => entry.Cautions).Select(caution => caution.Text).Distinct().Concat(
        [
            "Every treatment is ordered by a licensed vet, under the label and the law of the place. Withholding periods for milk and meat stand on the label.",
            "A forecast is a range, not a promise: one season in ten turns out worse than the poor one above.",
        ]);
}
