namespace Byrelaw.Reporting.Plans;

/// <summary>What must be done by when, and for whom.</summary>
internal static class TasksPart
{
    public static Part Of(Plan plan)
    {
        var tasks = plan.Calendar.Tasks.Where(task => !task.IsPast).ToList();
        var table = new Table("Tasks by their last day to start", "start by", "finished by", "what", "for", "why");
        foreach (var task in tasks.Where(task => !task.IsDone))
        {
            table.Add(
                Wording.Bold(Dates.Long(task.LastStart)), Dates.Long(task.Due), Name(task), TaskWords.For(task),
                task.Task.Because ?? "");
        }

        var done = plan.Calendar.Tasks.Where(task => task is { IsDone: true, SaidDone: null }).Select(TaskWords.Name).ToList();
        var said = plan.Calendar.Tasks.Where(task => task.SaidDone is not null).ToList();
        return tasks.Count == 0 ? Part.None : new DocumentBuilder().Heading(2, "What must be done by when")
            .Sentence(table.IsEmpty ? "Nothing is left to start." : "Each last day is worked back from when it must be finished, by how long it takes and how long its results take.")
            .Table(table)
            .Sentence(done.Count == 0 ? "" : $"Nobody needs these any more: {Phrases.And(done)}.")
            .Bullets(said.Select(task => $"{TaskWords.Name(task)}: said done on {Dates.Long(task.SaidDone!.On)}{(task.IsDone ? "" : $", and the book says otherwise: {TaskWords.For(task)}")}."))
            .As("tasks");
    }

    private static string Name(Planning.LeadTimes.TaskDates task)
    {
        var name = TaskWords.Name(task) + (task.Earliest is { } day ? $" (not before {Dates.Long(day)})" : "");
        return task.Task.Cautions.IsEmpty ? name : string.Join(' ', task.Task.Cautions.Select(caution => caution.Text).Prepend(Phrases.Stop(name)));
    }
}
