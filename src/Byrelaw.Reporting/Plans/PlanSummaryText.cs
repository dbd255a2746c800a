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
        foreach (var line in new[] { StopWords.Of(plan) }.OfType<string>().Concat(Summary.Of(plan)))
        {
            text.Sentence(line);
        }

        if (!plan.Sessions.IsEmpty)
        {
            text.Gap().Table(SessionsTable.Of(plan));
        }

        var lines = Past(plan).Concat(TasksPart.Next(plan).Select(row => $"{row.Start}: {row.Name}; {row.For}")).ToList();
        if (lines.Count > 0)
        {
            text.Gap().Heading(2, "Start by").In(2);
            foreach (var line in lines.Take(MostTasks))
            {
                text.Sentence(line);
            }

            text.Sentence(lines.Count > MostTasks ? $"and {lines.Count - MostTasks} more in the plan" : "");
        }

        return text.OnTerminal(Ink.Plain);
    }

    private static IEnumerable<string> Past(Plan plan) => plan.Calendar.Tasks.Where(task => task.IsPast && !task.Task.IsDecision)
        .Select(task => $"{Dates.Long(task.LastStart)} (PAST by {Numbers.Count(task.DaysPast, "day", "days")}): {TaskWords.Name(task)}; {TaskWords.For(task)}");
}
