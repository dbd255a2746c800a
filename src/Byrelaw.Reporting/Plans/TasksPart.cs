using Byrelaw.Planning.LeadTimes;

namespace Byrelaw.Reporting.Plans;

/// <summary>What must be done by when, and for whom.</summary>
internal static class TasksPart
{
    public static Part Of(Plan plan)
    {
        var tasks = plan.Calendar.Tasks.Where(task => !task.IsPast && !task.Task.IsDecision).ToList();
        var table = new Table("Tasks by their last day to start", "from", "start by", "finished by", "what", "for", "why");
        foreach (var row in Rows(plan))
        {
            table.Add(row.First, Wording.Bold(row.Start), row.Due, row.What, row.For, row.Why);
        }

        var done = plan.Calendar.Tasks.Where(task => task is { IsDone: true, SaidDone: null, WithoutADay.IsEmpty: true, Awaited.IsEmpty: true }).Select(TaskWords.Name).ToList();
        var said = plan.Calendar.Tasks.Where(task => task.SaidDone is not null && !task.Task.IsDecision).ToList();
        return tasks.Count == 0 && plan.Calendar.Tasks.All(task => task.Awaited.IsEmpty) ? Part.None : new DocumentBuilder().Heading(2, "What must be done by when")
            .Sentence(table.IsEmpty ? "Nothing is left to start." : "Each last day is worked back from when it must be finished, by how long it takes and how long its results take. "
                + "Days of an animal's own are those on which what it settles, if it turns out well, makes her sure for her session: a day sooner or later does not.")
            .Table(table)
            .Sentence(done.Count == 0 ? "" : $"Nobody needs these any more: {Phrases.And(done)}.")
            .Bullets(said.Select(task => $"{TaskWords.Name(task)}: said done on {Dates.Long(task.SaidDone!.On)}{(task.IsDone ? "" : $", and the book says otherwise: {TaskWords.For(task)}")}."))
            .Bullets(plan.Calendar.Tasks.Where(task => !task.Awaited.IsEmpty && !task.Task.IsDecision).Select(Awaited))
            .Bullets(NoDayWords.Of(plan))
            .As("tasks");
    }

    /// <summary>Nobody need start what is at the laboratory already.</summary>
    private static string Awaited(TaskDates task) => string.Join(' ', task.Awaited.GroupBy(animal => animal.Subject).Select(alike =>
        $"{TaskWords.Name(task)}: of {Phrases.And([.. alike.Select(animal => animal.Number)])} the sample for {alike.Key} is taken, and its result awaited."));

    /// <summary>All rows, by their last day.</summary>
    public static IEnumerable<TaskRow> Rows(Plan plan) => plan.Calendar.Tasks.Where(task => !task.IsPast && !task.IsDone && !task.Task.IsDecision).SelectMany(Rows).OrderBy(row => row.Last);

    /// <summary>What to start next: by the last day, and what serves only animals that take no place after all else; where it is too early for anybody to have a place, by the day alone.</summary>
    public static IEnumerable<TaskRow> Next(Plan plan) => Rows(plan).OrderBy(row => row.IsForThoseWatched && !TooEarly.Is(plan));

    /// <summary>A row for all; where animals have days of their own, one for all who have the same.</summary>
    private static IEnumerable<TaskRow> Rows(TaskDates task) => task.ByHer.IsEmpty
        ? [new(task.LastStart, "", Dates.Long(task.LastStart), Dates.Long(task.Due), TaskWords.Name(task), Name(task, task.Earliest), TaskWords.For(task), task.Task.Because ?? "")]
        : task.ByHer.Select(one => new TaskRow(
            one.Days[^1].End, Dates.Long(one.Days[0].Start), Days(one.Days), Dates.Long(one.Days[^1].End.PlusDays(task.Task.LeadDays)), TaskWords.Name(task, one.Animals), Cautioned(task, TaskWords.Name(task, one.Animals)), TaskWords.For(one.Animals), task.Task.Because ?? "")
        { IsForThoseWatched = one.Animals[0].WatchedBy.Length > 0 });

    /// <summary>The last day; with what is left out in between, where a hole makes two windows of it.</summary>
    private static string Days(ImmutableArray<DateInterval> days) => Dates.Long(days[^1].End)
        + (days.Length == 1 ? "" : $" (on {Phrases.And([.. days.Select(run => Dates.Range(run.Start, run.End))])} only)");

    private static string Name(TaskDates task, LocalDate? earliest)
    {
        return Cautioned(task, TaskWords.Name(task) + (earliest is { } day ? $" (not before {Dates.Long(day)})" : ""));
    }

    private static string Cautioned(TaskDates task, string name) => task.Task.Cautions.IsEmpty ? name : string.Join(' ', task.Task.Cautions.Select(caution => caution.Text).Prepend(Phrases.Stop(name)));
}

/// <summary>One row of the tasks.</summary>
/// <param name="Last">The last day to start.</param>
/// <param name="First">From when it counts; empty where it is not said.</param>
/// <param name="Start">The last day in words.</param>
/// <param name="Due">By when it is finished.</param>
/// <param name="Name">The task, with its session.</param>
/// <param name="What">The same with its cautions.</param>
/// <param name="For">Whom it is for.</param>
/// <param name="Why">The reason.</param>
internal sealed record TaskRow(LocalDate Last, string First, string Start, string Due, string Name, string What, string For, string Why)
{
    /// <summary>Whether it is only for animals that are watched, and take no place.</summary>
    public bool IsForThoseWatched { get; init; }
}
