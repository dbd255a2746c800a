namespace Byrelaw.Reporting.Tuning;

/// <summary>What lowering or raising a number does, in sentences.</summary>
internal static class MoveWords
{
    private const int AtMost = 12;

    /// <summary>Both ways, a sentence or two each.</summary>
    public static IEnumerable<string> Of(NumberTuning tuning) => Way(tuning, UsableBands.Below(tuning), -1).Concat(Way(tuning, UsableBands.Above(tuning), +1));

    /// <summary><c>3 more: 1423, 1044, 1502</c>.</summary>
    public static string Animals(IReadOnlyCollection<string> numbers, string more = "") =>
        $"{numbers.Count}{more}: {Phrases.FirstOf([.. numbers], AtMost)}";

    private static IEnumerable<string> Way(NumberTuning tuning, IReadOnlyList<int> bands, int way)
    {
        var verb = way < 0 ? "Lowering" : "Raising";
        var beside = tuning.CurrentStep + way;
        if (beside < 0 || beside >= tuning.Steps.Length)
        {
            yield return $"{verb} it changes nothing.";
            yield break;
        }

        var any = UsableBands.Any(tuning) && bands.Count > 0;
        if (any)
        {
            var changes = tuning.Changes(tuning.CurrentStep, bands[0]).ToList();
            var (letIn, keptOut) = (Numbered(changes.Where(change => change.IsLetIn)), Numbered(changes.Where(change => change.IsKeptOut)));
            var parts = new[] { letIn.Count == 0 ? "" : $"lets in {Animals(letIn, " more")}", keptOut.Count == 0 ? "" : $"leaves out {Animals(keptOut)}" };
            yield return $"{verb} it to {Value(tuning, bands[0])} {string.Join(", and ", parts.Where(part => part.Length > 0))}.";
        }
        else
        {
            yield return $"{verb} it lets nobody in and leaves nobody out.";
        }

        if (!any || bands[0] != beside)
        {
            yield return $"{(any ? "Before that, at" : "At")} {Value(tuning, beside)}, {Others(tuning, beside)}.";
        }
    }

    /// <summary><c>1423 goes from Later to No</c>.</summary>
    private static string Others(NumberTuning tuning, int step)
    {
        var groups = tuning.Changes(tuning.CurrentStep, step).GroupBy(change => (change.Before, change.After))
            .Select(group => $"{Phrases.FirstOf(Numbered(group), AtMost)} {(group.Count() == 1 ? "goes" : "go")} from {AnswerWords.Word(group.Key.Before)} to {AnswerWords.Word(group.Key.After)}");
        return string.Join("; ", groups);
    }

    private static List<string> Numbered(IEnumerable<ChangedAnswer> changes) => [.. changes.Select(change => change.Animal.Number)];

    private static string Value(NumberTuning tuning, int step) => NumberWords.Value(tuning.Number, tuning.ValueOf(step));
}
