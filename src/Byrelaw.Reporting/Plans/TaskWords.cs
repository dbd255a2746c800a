namespace Byrelaw.Reporting.Plans;

/// <summary>Says whom a task is for.</summary>
internal static class TaskWords
{
    private const int Named = 12;

    /// <summary>The task, with its session where it is to be done for each.</summary>
    public static string Name(TaskDates task) => task.IsOfASession ? $"{task.Task.Name} (session {task.Session})" : task.Task.Name;

    /// <summary><c>31 animals, liver copper: 1014, 1019 and 29 more</c>; <c>the farm</c>.</summary>
    public static string For(TaskDates task)
    {
        if (!task.IsForAnimals)
        {
            return "the farm";
        }

        return task.Animals.IsEmpty ? "nobody needs it any more" : For(task.Animals);
    }

    /// <summary>The task for animals that have the same days, with the method where they are only watched by it: <c>Scan (session 1, for Natural heat)</c>.</summary>
    public static string Name(TaskDates task, ImmutableArray<AnimalInNeed> animals) =>
        animals[0].WatchedBy is { Length: > 0 } method ? $"{task.Task.Name} (session {task.Session}, for {method})" : Name(task);

    /// <summary>Some animals, and what is missed of them.</summary>
    public static string For(ImmutableArray<AnimalInNeed> animals)
    {
        var subjects = animals.Select(animal => animal.Subject).OfType<string>().Distinct().ToList();
        var numbers = animals.Select(animal => animal.Number).Distinct().ToList();
        var mobs = animals.Max(animal => animal.MoreOfTheMob);
        return Numbers.Count(numbers.Count, "animal", "animals")
            + (subjects.Count == 0 ? "" : $", {Phrases.And(subjects)}")
            + (mobs > 0 ? $" (of at least {mobs} of the mob not sampled yet)" : "")
            + $": {Phrases.FirstOf(numbers, Named)}"
            + string.Concat(animals[0].AlsoFor.GroupBy(also => also.From).Select(group => $"; holds for {(group.Count() == 1 ? "session" : "sessions")} {Phrases.And([.. group.Select(also => $"{also.Session}")])} too if done from {Dates.Long(group.Key)}"))
            + (animals[0].WatchedBy.Length == 0 ? "" : "; only watched, taking no place")
            + string.Concat(AskedWords.Waiting(animals[0].Waiting).Select(waiting => $". {waiting.TrimEnd('.')}"));
    }
}
