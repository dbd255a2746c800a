using Byrelaw.Checking.Trouble.Finders;

namespace Byrelaw.Checking.Trouble;

/// <summary>
/// Looks for trouble in rules before any animal is judged by them: rules that nobody can meet, that ask nothing, that fight.
/// It claims only what it has proved; what it cannot follow it says nothing about.
/// </summary>
public static class TroubleFinder
{
    /// <summary>Everything found that the files do not accept, by file in the order of reading, then by place.
    /// Codes start with <c>B11</c>; all are warnings.</summary>
    /// <param name="rulebook">As read; what is broken in it is left alone.</param>
    /// <param name="cancelled">Gives the search up.</param>
    /// <exception cref="OperationCanceledException">It was given up.</exception>
    public static ImmutableArray<Diagnostic> Find(Rulebook rulebook, CancellationToken cancelled = default)
    {
        ArgumentNullException.ThrowIfNull(rulebook);
        return Find(new Study(rulebook.WithoutFloor(), cancelled));
    }

    /// <summary>The same for a rulebook under study, which says afterwards how much work it took.</summary>
    internal static ImmutableArray<Diagnostic> Find(Study study)
    {
        var rulebook = study.Rulebook;
        List<TroubleFound> findings =
        [
            .. ConditionTrouble.Find(study),
            .. RuleTrouble.Find(study),
            .. PairTrouble.Find(study),
            .. UnusedDefines.Find(rulebook),
            .. PassesNotKnown.Find(study),
            .. EarlyTests.Find(study),
            .. LateResults.Find(study),
            .. Finders.LookAlikeNames.Find(rulebook),
        ];
        var files = rulebook.Files.Select((file, place) => (file.Path, place)).DistinctBy(file => file.Path).ToDictionary(file => file.Path, file => file.place);
        return
        [
            .. Acceptances.NotAccepted(rulebook, findings).Concat(TooLateTask.Of(rulebook).Select(TroubleProblems.TooLate))
                .OrderBy(problem => files.GetValueOrDefault(problem.File, int.MaxValue))
                .ThenBy(problem => problem.Line).ThenBy(problem => problem.Column).ThenBy(problem => problem.Code, StringComparer.Ordinal),
        ];
    }
}
