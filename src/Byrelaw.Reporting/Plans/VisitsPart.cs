namespace Byrelaw.Reporting.Plans;

/// <summary>The visits that a collection could be on, all of them, and why one is the best.</summary>
internal static class VisitsPart
{
    public static Part Of(Plan plan)
    {
        if (plan.Visits is not { } visits)
        {
            return Part.None;
        }

        var wants = PlanHead.Aims(plan).Wants;
        var table = new Table("Every visit that the programme allows", "collection", "donors", "recipients", wants is null ? "expected" : "expected, and how sure", "costs", "calves due in cows", "but");
        foreach (var option in visits.Options)
        {
            table.Add(
                Wording.Bold($"{Dates.Long(option.Collection)}{(option == visits.Best ? " (best)" : "")}"), Usable(option.Donors), Usable(option.Recipients),
                option.Outlook is { } outlook ? ChanceWords.Mean(outlook.Wanted) + (outlook.Chance is { } chance ? $", {ChanceWords.Of(chance)} sure" : "") : "not known",
                option.Outlook?.Cost is { } cost ? (option.Outlook.IsAtLeast ? "at least " : "") + MoneyWords.Of(cost) : "",
                option.Calving.Sessions is [{ InCows: { } due }, ..] ? Dates.Range(due.From, due.To) : "", But(option));
        }

        return new DocumentBuilder().Heading(2, "Which visit")
            .Sentence(visits.Options.IsEmpty ? "No visit for collection falls between the days that the programme allows." : Best(visits))
            .Table(table)
            .Sentence("What is expected and what it costs count those to ask about among the animals: there is time to find out.")
            .Picture(visits.Options.Length > 1 ? VisitsPicture.Of(visits.Options) : null).As("visits");
    }

    private static string Best(VisitComparison visits) => visits.Best is not { } best
        ? "No visit can be used; the table says why."
        : $"The best is {Dates.Long(best.Collection)}" + (visits.RunnerUp is { } other ? $": {Why(visits.Because)} than {Dates.Long(other.Collection)}, the next best." : ": no other can be used.");

    private static string Why(Advantage because) => because switch
    {
        Advantage.Chance => "it is surer to reach what is wanted",
        Advantage.Wanted => "more is to be expected of it",
        Advantage.Donors => "more donors can be used",
        Advantage.Recipients => "more recipients can be used",
        Advantage.Cost => "it costs less",
        Advantage.FewerTasksPast => "fewer tasks are past their last day",
        Advantage.FewerClashes => "fewer of its days fall on weekends, holidays or days without a visit",
        _ => "it is earlier",
    };

    private static string Usable(Usable usable) => $"{usable.Count} of {usable.Judged}{(usable.Asked > 0 ? $", {usable.Asked} to ask about" : "")}";

    private static string But(VisitOption option)
    {
        var obstacles = option.Obstacles.Select(obstacle => obstacle switch
        {
            Obstacle.TreatmentPast => "its treatments should have started already",
            Obstacle.TooLate => "TOO LATE: it calves after the last acceptable day",
            Obstacle.NoDonor => "no donor can be used",
            _ => "no recipient can be used",
        });
        var past = option.TasksPast.Length == 0 ? [] : new[] { $"{Numbers.Count(option.TasksPast.Length, "task is", "tasks are")} past" };
        return string.Join("; ", obstacles.Concat(past).Concat(option.Clashes.Select(clash => $"{Dates.Short(clash.Date, option.Collection.Year)} is {EntryWords.Of(clash)}").Distinct().Take(3)));
    }
}
