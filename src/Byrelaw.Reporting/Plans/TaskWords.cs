namespace Byrelaw.Reporting.Plans;

/// <summary>Says whom a task is for.</summary>
internal static class TaskWords
{
    private const int Named = 12;

    /// <summary>The task, with its session where it is to be done for each.</summary>
    public static string Name(TaskDates task) => task.Task.EachSession ? $"{task.Task.Name} (session {task.Session})" : task.Task.Name;

    /// <summary><c>31 animals, liver copper: 1014, 1019 and 29 more</c>; <c>the farm</c>.</summary>
    public static string For(TaskDates task)
    {
        if (!task.IsForAnimals)
        {
            return "the farm";
        }

        if (task.Animals.IsEmpty)
        {
            return "nobody needs it any more";
        }

        var subjects = task.Animals.Select(animal => animal.Subject).OfType<string>().Distinct().ToList();
        var mobs = task.Animals.Max(animal => animal.MoreOfTheMob);
        return Numbers.Count(task.Animals.Length, "animal", "animals")
            + (subjects.Count == 0 ? "" : $", {Phrases.And(subjects)}")
            + (mobs > 0 ? $" (at least {mobs} more of the mob)" : "")
            + $": {Phrases.FirstOf([.. task.Animals.Select(animal => animal.Number)], Named)}";
    }
}
