namespace Byrelaw.Workshop.Correcting;

/// <summary>
/// Tries what may mend a problem, and offers only what does: with the change made and the rulebook read again, the problem
/// is gone, its line has no new error, and no error has come up elsewhere.
/// </summary>
public static class Corrector
{
    // Of twenty errors in one file nobody reads the help of the twenty-first before mending the first.
    private const int MostProblems = 20;

    /// <summary>The reading with a correction on each error that has one. Costs some further readings of the rulebook, a bounded number.</summary>
    public static RulebookReading Corrected(this RulebookReading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        if (DraftOf(reading) is not { } draft)
        {
            return reading;
        }

        var trial = new MendTrial(draft, reading.Problems, new Effort());
        var left = MostProblems;
        return reading with
        {
            Problems = [.. reading.Problems.Select(problem =>
                (problem.Severity == Severity.Error && left-- > 0 ? Mended(problem, draft, trial) : Untried(problem)) with { Proposed = [] })],
        };
    }

    /// <summary>One problem of a reading with its correction, for an editor that asks for one at a time.</summary>
    public static Diagnostic Corrected(this RulebookReading reading, Diagnostic problem)
    {
        ArgumentNullException.ThrowIfNull(reading);
        ArgumentNullException.ThrowIfNull(problem);
        return DraftOf(reading) is { } draft && problem is { Severity: Severity.Error, Correction: null }
            ? Mended(problem, draft, new MendTrial(draft, reading.Problems, new Effort()))
            : problem;
    }

    private static RereadParts? DraftOf(RulebookReading reading) => reading is { Parts: { } parts, Asked: { } asked } ? new RereadParts(parts, asked) : null;

    private static Diagnostic Mended(Diagnostic problem, RereadParts draft, MendTrial trial)
    {
        var statement = draft.StatementAt(problem);
        foreach (var leavesOthers in trial.HasOthers(problem) ? (bool[])[false, true] : [false])
        {
            if (Slip(Slips.OfTheHand) is { At.File: not null } byHand)
            {
                return problem with { Correction = Correction(byHand), Help = Question(byHand), Lines = null };
            }

            if (problem.Proposed.FirstOrDefault(proposal => trial.Mends(problem, proposal, leavesOthers)) is { At.File: not null } proposed)
            {
                return Proposed(problem, proposed);
            }

            if (Slip(Slips.InWords) is { At.File: not null } inWords)
            {
                return problem with { Correction = Correction(inWords), Help = Question(inWords), Lines = null };
            }

            Proposal Slip(Func<Diagnostic, TypedStatement, RereadParts, IEnumerable<Proposal>> slips) =>
                statement is null ? default : trial.First(problem, statement, slips(problem, statement, draft).Distinct(), leavesOthers);
        }

        return Untried(problem);
    }

    /// <summary>The problem without a help that nobody has found to mend it.</summary>
    private static Diagnostic Untried(Diagnostic problem) => problem.IsHelpTried ? problem with { Help = null, Lines = null } : problem with { Lines = null };

    /// <summary>A change of several lines is shown by its lines; of one, by its words.</summary>
    private static Diagnostic Proposed(Diagnostic problem, Proposal made) => made.Text.Contains('\n', StringComparison.Ordinal)
        ? problem with { Correction = Correction(made) }
        : problem with { Correction = Correction(made), Help = Says(problem.Help, made) ?? Question(made), Lines = null };

    /// <summary>The help as it was worded, where it speaks of this very change.</summary>
    private static string? Says(string? help, Proposal made) => help is not null && help.Contains(made.Text.Trim(' ', '"'), StringComparison.Ordinal) ? help : null;

    private static string Question(Proposal made) =>
        IsDeletion(made) ? $"is {Quoted.Of(made.At.Text.Trim())} one too many?" : $"did you mean {Snippet.Of(made)}?";

    private static bool IsDeletion(Proposal made) => made.Text.Trim().Length == 0;

    private static Correction Correction(Proposal made) => new(
        IsDeletion(made) ? $"delete {Quoted.Of(made.At.Text.Trim())}" : $"write {Snippet.Of(made)}",
        [new Replacement(made.At.File.Path, made.At.Line, made.At.Column, made.At.Length, made.Text)]);
}
