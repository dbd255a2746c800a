namespace Byrelaw.Reporting.Plans;

/// <summary>Last days that have passed, said first, with what can still be done.</summary>
internal static class PastPart
{
    public static Part Of(Plan plan)
    {
        var past = plan.Calendar.Tasks.Where(task => task.IsPast && !task.Task.IsDecision).ToList();
        return past.Count == 0 ? Part.None : new DocumentBuilder().Heading(2, "Past already")
            .Sentence($"{Phrases.Sentence(Numbers.Count(past.Count, "task", "tasks"))} should have been started before {Dates.Long(plan.Today)}. Either it is done and not on record, or it is late:")
            .Bullets(past.Select(task => Line(plan, task)))
            .As("past");
    }

    private static string Line(Plan plan, TaskDates task)
    {
        var still = task.InTimeFor is { } day
            ? $"Started today, it is in time for a {(plan.Calendar.Sessions is [{ Collection: not null }, ..] ? "collection" : "transfer")} on {Dates.Long(day)} or later."
            : "Do it at once, or plan without it.";
        return $"{TaskWords.Name(task)} ({TaskWords.For(task)}): the last day was {Dates.Long(task.LastStart)}, {Numbers.Count(task.DaysPast, "day", "days")} ago. {still}";
    }
}
