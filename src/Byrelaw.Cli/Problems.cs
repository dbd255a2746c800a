using Byrelaw.Reporting.Causes;

namespace Byrelaw.Cli;

/// <summary>Collects the problems of a run and prints each once, in the one form.</summary>
public sealed class Problems
{
    private readonly List<Diagnostic> _all = [];
    private readonly HashSet<Diagnostic> _seen = [];
    private readonly Dictionary<Diagnostic, string> _below = [];
    private readonly HashSet<Diagnostic> _ofRows = [];
    private IReadOnlyList<ProblemCause> _causes = [];

    /// <summary>All of them, in the order they were found.</summary>
    public IReadOnlyList<Diagnostic> All => _all;

    /// <summary>How many are errors.</summary>
    public int Errors => _all.Count(problem => problem.Severity == Severity.Error);

    /// <summary>Whether the ledger of sheets cannot be trusted: that is nobody's slip in a row, and every command ends badly.</summary>
    public bool LedgerIsBroken { get; set; }

    /// <summary>How a command ends that did what it was asked to do. Rows of the records that cannot be read are doubts like others, and the exit code's business
    /// only where somebody asks for it.</summary>
    public int Ends(Doors doors) => LedgerIsBroken ? ExitCode.Bad : doors.IsStrict || _all.Exists(problem => problem.Severity == Severity.Error && !_ofRows.Contains(problem) && !IsOfAnEmbryo(problem))
        ? Errors > 0 ? ExitCode.Bad : ExitCode.Done
        : ExitCode.Done;

    /// <summary>An embryo whose row cannot be believed is in doubt, and offered to nobody.</summary>
    private static bool IsOfAnEmbryo(Diagnostic problem) => problem.Code.StartsWith("R05", StringComparison.Ordinal);

    /// <summary>How many are warnings.</summary>
    public int Warnings => _all.Count - Errors;

    /// <summary>Adds those not added before.</summary>
    public void Add(IEnumerable<Diagnostic> problems) => _all.AddRange(problems.Where(_seen.Add));

    /// <summary>Adds one with what is printed below it.</summary>
    public void Add(Diagnostic problem, string below)
    {
        Add([problem]);
        _below[problem] = below;
    }

    /// <summary>Brings the problems of rows of the records together, by their cause; they are printed last.</summary>
    /// <param name="causes">The causes, in the order in which they are told.</param>
    public void BringTogether(IReadOnlyList<ProblemCause> causes)
    {
        _causes = causes;
        _ofRows.UnionWith(causes.SelectMany(cause => cause.Rows).Select(row => row.Problem));
    }

    /// <summary>Prints them all, of each cause in the records one; to whoever watches, also where to learn more.</summary>
    public void Print(Doors doors)
    {
        foreach (var problem in _all.Where(problem => !_ofRows.Contains(problem)))
        {
            doors.Err.Write(Coloured(DiagnosticText.Of(problem), problem.Severity, doors.ErrInk));
            doors.Err.Write('\n');
            if (_below.TryGetValue(problem, out var below))
            {
                doors.Err.Write($"{below}\n");
            }
        }

        foreach (var cause in _causes.Take(ProblemCauses.Most))
        {
            doors.Err.Write(Coloured(CauseText.Of(cause), cause.First.Severity, doors.ErrInk));
            doors.Err.Write('\n');
        }

        if (CauseText.Rest(_causes) is { } rest)
        {
            doors.Err.WriteLine($"{rest}.\n");
        }

        if (doors.ShowsProgress && _all.Count > 0)
        {
            doors.Err.WriteLine($"What such a code means, with an example: byrelaw check --explain {_all[0].Code}\n");
        }
    }

    /// <summary>Prints only the errors, where all of them are in the records, and says what they mean for the answers.</summary>
    /// <returns>How the program ends.</returns>
    public int TellErrorsInRecords(Doors doors)
    {
        var errors = new Problems();
        errors.Add(_all.Where(problem => problem.Severity == Severity.Error));
        errors.BringTogether([.. _causes.Where(cause => cause.First.Severity == Severity.Error)]);
        errors.Print(doors);
        if (errors.Errors == 0)
        {
            return ExitCode.Done;
        }

        doors.Err.WriteLine($"{errors.Counted()} in the records. What they touch is in doubt, and doubt lets no animal through.");
        return errors.Ends(doors);
    }

    /// <summary><c>2 errors and 1 warning</c>; empty for none.</summary>
    public string Counted()
    {
        var parts = new List<string>();
        if (Errors > 0)
        {
            parts.Add(Numbers.Count(Errors, "error", "errors"));
        }

        if (Warnings > 0)
        {
            parts.Add(Numbers.Count(Warnings, "warning", "warnings"));
        }

        return Phrases.And(parts);
    }

    /// <summary>Sets off the word that says how bad it is; the word itself stays.</summary>
    private static string Coloured(string text, Severity severity, Ink ink)
    {
        var word = severity == Severity.Error ? " error " : " warning ";
        var at = text.IndexOf(word, StringComparison.Ordinal);
        return !ink.IsColoured || at < 0 ? text
            : $"{ink.Bold(text[..at])}{(severity == Severity.Error ? ink.Red(word) : ink.Yellow(word))}{text[(at + word.Length)..]}";
    }
}
