namespace Byrelaw.Reporting.Plans;

/// <summary>A plan on the terminal: what matters most.</summary>
public static class PlanText
{
    private const int MostTasks = 8;

    /// <summary>The text.</summary>
    public static string Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var text = new StringBuilder();
        text.Append(PlainText.Clean(PlanHead.Name(plan))).Append(" · ").Append(PlanHead.Standing(plan)).Append("\n\n");
        foreach (var line in Summary.Of(plan))
        {
            text.Append("  ").Append(PlainText.Clean(line)).Append('\n');
        }

        var tasks = plan.Calendar.Tasks.Where(task => !task.IsDone).ToList();
        if (tasks.Count > 0)
        {
            text.Append("\n  Start by\n");
            foreach (var task in tasks.Take(MostTasks))
            {
                text.Append($"    {Dates.Long(task.LastStart)}{(task.IsPast ? $" (PAST by {Numbers.Count(task.DaysPast, "day", "days")})" : "")}: {PlainText.Clean(task.Task.Name)}; {PlainText.Clean(TaskWords.For(task))}\n");
            }

            text.Append(tasks.Count > MostTasks ? $"    and {tasks.Count - MostTasks} more in the plan\n" : "");
        }

        return text.ToString();
    }
}
