namespace Byrelaw.Language.Binding.Plans;

/// <summary>Binds what the farm's own file says is done.</summary>
/// <param name="plans">The tasks.</param>
/// <param name="sessions">How many sessions the programme has.</param>
/// <param name="until">What is said of a later day is not in force; null where nobody says what day it is.</param>
internal sealed class DoneBinder(PlanStatements plans, int sessions, LocalDate? until)
{
    /// <summary>All of it, in the order of writing.</summary>
    public ImmutableArray<TaskDone> Bind(IEnumerable<RuleFile> files)
    {
        var done = ImmutableArray.CreateBuilder<TaskDone>();
        foreach (var file in files)
        {
            foreach (var block in file.Blocks.Where(block => block.Head is DoneLine))
            {
                if (!file.IsRoot)
                {
                    file.Problems.Add(FileProblems.UsedFileHolds(block.Span, "done"));
                }
                else if (Bind((DoneLine)block.Head!, file.Problems) is { } one)
                {
                    done.Add(one);
                }
            }
        }

        return [.. done.Where(one => !(one.On > until))];
    }

    private TaskDone? Bind(DoneLine line, List<Diagnostic> problems)
    {
        var task = plans.Tasks.FirstOrDefault(task => NameFolding.Fold(task.Name) == NameFolding.Fold(line.Task.Value));
        if (task is null)
        {
            problems.Add(TaskProblems.UnknownTask(line.Task.Span, line.Task.Value, NearestName.To(line.Task.Value, plans.Tasks.Select(one => one.Name))));
            return null;
        }

        var session = line.Session?.Value;
        if (task.EachSession ? session is null : session is not null)
        {
            problems.Add(TaskProblems.SessionOfTask(line.Session?.Span ?? line.Span, task.EachSession));
            return null;
        }

        if (session is { } number && (number < 1 || number > sessions || number != Math.Floor(number)))
        {
            problems.Add(BookingProblems.NoSuchSession(line.Session!.Span, sessions));
            return null;
        }

        return new TaskDone(task.Name, line.On.Value, (int?)session, line.Span);
    }
}
