namespace Byrelaw.Reporting.Lists;

/// <summary>The few things that move most animals, in the order in which to do them.</summary>
public static class DoNext
{
    private const int NumbersShown = 12;
    private const int TasksShown = 5;

    /// <summary>Each a sentence or two.</summary>
    public static IReadOnlyList<string> Of(ListReport list)
    {
        var tasks = new List<string>();
        if (list.List.IsBroken)
        {
            tasks.Add("Mend the rule files: lines of them cannot be read, and until then nobody on this list is Ready.");
        }

        if (list.List.Unknown.Length > 0)
        {
            tasks.Add($"Look up {Phrases.And(list.List.Unknown)}: named in the programme, not in the records.");
        }

        tasks.AddRange(FindOut.Of(list).Take(TasksShown).Select(found => Task(found, list)));
        var errors = list.Herd.Problems.Where(problem => problem.Severity == Severity.Error).ToList();
        if (errors.Count > 0)
        {
            tasks.Add($"Mend the records: {Numbers.Count(errors.Count, "line cannot be trusted", "lines cannot be trusted")} "
                + $"({Phrases.FirstOf([.. errors.Select(error => $"{FileWords.Short(error.File)} line {error.Line}").Distinct()], 6)}); what {(errors.Count == 1 ? "it" : "they")} might have said is in doubt.");
        }

        var course = list.List.Count(Answer.OnCourse);
        if (course > 0)
        {
            tasks.Add($"Write down whatever happens to {(course == 1 ? "the one animal" : $"the {course} animals")} On course, and draw up this list again before {list.Long(list.List.Choice.JudgedFrom)}.");
        }

        return tasks;
    }

    private static string Task(FindOut found, ListReport list)
    {
        var by = found.IsLater ? $"from {list.Long(found.By)}" : $"by {list.Long(found.By)}";
        var from = !found.IsLater && found.From is { } day && day > list.Herd.KnownDay ? $", not before {list.Long(day)}" : "";
        var settles = found.Alone == found.Numbers.Count ? found.Alone switch { 1 => "That settles her.", 2 => "That settles both.", _ => "That settles all of them." }
            : found.Alone == 0 ? found.Numbers.Count == 1 ? "She needs more besides." : "Each of them needs more besides."
            : $"That settles {found.Alone} of them; the others need more besides.";
        return $"{Phrases.Sentence(found.What)}, {found.Where}, for {Numbers.Count(found.Numbers.Count, "animal", "animals")} {by}{from}: {Phrases.FirstOf(found.Numbers, NumbersShown)}. {settles}";
    }
}
