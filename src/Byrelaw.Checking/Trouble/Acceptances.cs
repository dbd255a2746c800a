namespace Byrelaw.Checking.Trouble;

/// <summary>Sets aside what the files accept, and says which acceptances accept nothing.</summary>
internal static class Acceptances
{
    /// <summary>The findings that nobody accepts, and the acceptances of the first file that accept nothing. (One of a used file may speak of what this
    /// file has changed.)</summary>
    public static IEnumerable<Diagnostic> NotAccepted(Rulebook rulebook, IReadOnlyList<TroubleFound> findings)
    {
        foreach (var finding in findings.Where(finding => !IsAccepted(rulebook, finding)))
        {
            yield return finding.Problem;
        }

        if (Wholeness.IsBroken(rulebook))
        {
            // What cannot be read may have the trouble that is accepted.
            yield break;
        }

        foreach (var acceptance in rulebook.Acceptances)
        {
            if (acceptance.Span.File == rulebook.Files[0] && !findings.Any(finding => Accepts(acceptance, finding)))
            {
                yield return TroubleProblems.AcceptsNothing(acceptance);
            }
        }
    }

    /// <summary>Whether a file accepts a trouble.</summary>
    public static bool IsAccepted(Rulebook rulebook, TroubleFound finding) => rulebook.Acceptances.Any(acceptance => Accepts(acceptance, finding));

    private static bool Accepts(Acceptance acceptance, TroubleFound finding) =>
        acceptance.Trouble == finding.Sort
        && ((Same(acceptance.Name, finding.Name) && Same(acceptance.Other, finding.Other))
            || (finding.Sort is TroubleSort.NeverMetWith or TroubleSort.LooksLike && Same(acceptance.Name, finding.Other) && Same(acceptance.Other, finding.Name)));

    private static bool Same(string? one, string? other) => NameFolding.Fold(one ?? "") == NameFolding.Fold(other ?? "");
}
