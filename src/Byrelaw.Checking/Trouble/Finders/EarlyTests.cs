namespace Byrelaw.Checking.Trouble.Finders;

/// <summary>Tests that count from the very day of what they are to tell about: so early, many a test finds nothing.</summary>
internal static class EarlyTests
{
    public static IEnumerable<TroubleFound> Find(Study study)
    {
        var places = study.Rulebook.Defines.Where(define => !define.IsBroken).Select(define => (define.Name, define.Condition))
            .Concat(study.Rules.Select(rule => (rule.Rule.Name, Condition: rule.Rule.Needs)))
            .Concat(study.Rulebook.Prefers.Where(prefer => !prefer.IsBroken).Select(prefer => (prefer.Name, prefer.Condition)));
        foreach (var (name, condition) in places)
        {
            foreach (var test in condition.Written().OfType<TestCondition>())
            {
                if (Since(test.Windows) is { } since && since.Kinds.All(kind => kind.Id != test.Test.Id)
                    && study.Show.TestsEarly(TroubleProblems.TestsEarly(test, since), test, since) is { } shown)
                {
                    yield return new TroubleFound(TroubleSort.TestsEarly, name, null, shown);
                }
            }
        }
    }

    /// <summary>The window that lets an early test in, where no other window keeps it out.</summary>
    private static SinceLast? Since(ImmutableArray<Window> windows) => windows.Any(window => window is FromAfterLast or FromAfterSpell or AtLeastAgo or BetweenAgo)
        ? null
        : windows.OfType<SinceLast>().FirstOrDefault();
}
