namespace Byrelaw.Reporting.Plans;

/// <summary>A plan on the terminal: what matters most.</summary>
public static class PlanSummaryText
{
    private const int MostTasks = 8;

    /// <summary>The text.</summary>
    public static string Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var text = new DocumentBuilder().Sentence(PlanHead.Of(plan).InALine).Gap().In(1);
        foreach (var line in Summary.Of(plan))
        {
            text.Sentence(line);
        }

        if (!plan.Sessions.IsEmpty)
        {
            text.Gap().Table(SessionsTable.Of(plan));
        }

        var tasks = plan.Calendar.Tasks.Where(task => !task.IsDone && !task.Task.IsDecision).ToList();
        if (tasks.Count > 0)
        {
            text.Gap().Heading(2, "Start by").In(2);
            foreach (var task in tasks.Take(MostTasks))
            {
                text.Sentence($"{Dates.Long(task.LastStart)}{(task.IsPast ? $" (PAST by {Numbers.Count(task.DaysPast, "day", "days")})" : "")}: {TaskWords.Name(task)}; {TaskWords.For(task)}");
            }

            text.Sentence(tasks.Count > MostTasks ? $"and {tasks.Count - MostTasks} more in the plan" : "");
        }

        return text.OnTerminal(Ink.Plain);
    }
}
