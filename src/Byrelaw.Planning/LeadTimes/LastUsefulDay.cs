namespace Byrelaw.Planning.LeadTimes;

/// <summary>
/// Until when a record that is asked for can still be of use: it must be dated within the days that its rule looks at, and its result be in hand on
/// the first day on which the animal is judged. How long a result takes is what the task says that settles it.
/// </summary>
public static class LastUsefulDay
{
    /// <summary>The last day on which to begin.</summary>
    /// <param name="missing">What is asked for.</param>
    /// <param name="by">The first day on which the animal is judged.</param>
    /// <param name="list">The list.</param>
    /// <param name="tasks">All tasks; those of other lists do not count, nor those that are not needed.</param>
    public static LocalDate Of(Missing missing, LocalDate by, string list, IEnumerable<PlanTask> tasks)
    {
        ArgumentNullException.ThrowIfNull(missing);
        ArgumentNullException.ThrowIfNull(tasks);
        if (missing.Reason is not (MissingReason.NoResult or MissingReason.ResultTooVague or MissingReason.TooFewOfTheMob))
        {
            // What happened can be looked up in the book, or mended, until she is judged.
            return by;
        }

        var last = missing.To is { } to && to < by && (missing.From is not { } from || from <= to) ? to : by;
        return last.PlusDays(-LeadDays(missing.Subject, list, tasks));
    }

    /// <summary>The same of a whole answer: of each rule that is not known something must be found out, and of several ways the longest open one counts.</summary>
    /// <returns>Null where nothing is asked for.</returns>
    public static LocalDate? Of(AnimalJudgement animal, LocalDate by, string list, IEnumerable<PlanTask> tasks)
    {
        ArgumentNullException.ThrowIfNull(animal);
        var days = animal.Rules.Where(rule => rule.Answer == RuleAnswer.NotKnown && rule.InTheWay)
            .Select(rule => rule.Findings.Where(finding => finding.Decides).SelectMany(finding => finding.Missing)
                .Max(missing => (LocalDate?)Of(missing, by, list, tasks)))
            .OfType<LocalDate>().ToList();
        return days.Count == 0 ? null : days.Min();
    }

    /// <summary>How long before the day that a record is dated it must be begun, and how long after it the result is in hand, by the quickest task that settles it.</summary>
    /// <param name="subject">What is asked for.</param>
    /// <param name="lists">The lists for which it is: tasks of other lists do not count, nor those that are not needed.</param>
    /// <param name="tasks">All tasks.</param>
    public static (int Before, int After) Lead(string subject, ImmutableArray<string> lists, IEnumerable<PlanTask> tasks)
    {
        ArgumentNullException.ThrowIfNull(tasks);
        return tasks
            .Where(task => !task.IsNotNeeded && task.List is { } own && lists.Any(list => NameFolding.Fold(own) == NameFolding.Fold(list))
                && task.SettlesKinds.Any(kind => NameFolding.Fold(kind.Name) == NameFolding.Fold(subject)))
            .OrderBy(task => task.LeadDays).Select(task => (task.TakesDays, task.LeadDays - task.TakesDays)).FirstOrDefault();
    }

    private static int LeadDays(string subject, string list, IEnumerable<PlanTask> tasks) => Lead(subject, [list], tasks) is var (before, after) ? before + after : 0;
}
