namespace Byrelaw.Checking.Trouble.Finders;

/// <summary>Lookups in a window that closes before a result can be there: a sample of the last 5 days, where results take 10.</summary>
internal static class LateResults
{
    public static IEnumerable<TroubleFound> Find(Study study)
    {
        var tasks = study.Rulebook.Plans.Tasks.Where(task => task.ResultsTake is not null && !task.IsNotNeeded).ToList();
        foreach (var rule in study.Rules)
        {
            foreach (var condition in tasks.Count == 0 ? [] : rule.Rule.Needs.Written())
            {
                if (LookedUp(condition) is { } kind
                    && condition.Windows.OfType<InTheLast>().FirstOrDefault() is { } window
                    && tasks.Find(task => task.SettlesKinds.Any(settled => settled.Id == kind.Id) && IsTooLong(task, window)) is { } task)
                {
                    yield return new TroubleFound(TroubleSort.OutOfReach, rule.Rule.Name, null, TroubleProblems.ResultsTooLate(window, kind, task));
                }
            }
        }
    }

    private static bool IsTooLong(PlanTask task, InTheLast window) => DaysLong.Of(task.ResultsTake!.Value).Fewest > DaysLong.Of(window.Length).Most;

    private static Kind? LookedUp(Condition condition) =>
        condition is CountCondition or ApartCondition ? null : new ConditionParts(condition).Kinds.FirstOrDefault(kind => kind is TestKind or MeasureKind);
}
