namespace Byrelaw.Workshop.Correcting;

/// <summary>Tries changes on a rulebook: guesses first on the block alone, which costs little, then on all of it.</summary>
internal sealed class MendTrial(RereadParts draft, IReadOnlyList<Diagnostic> problems, Effort budget)
{
    private const int MostReadings = 12;

    private readonly int _errors = problems.Count(problem => problem.Severity == Severity.Error);

    /// <summary>Whether a change mends a problem: there are fewer errors, and none in its line that was not there.</summary>
    /// <param name="problem">The error to be rid of.</param>
    /// <param name="change">The change.</param>
    /// <param name="leavesOthers">Whether errors that the line had besides may be left in it.</param>
    public bool Mends(Diagnostic problem, Proposal change, bool leavesOthers)
    {
        if (!budget.Take(draft.Read.Sum(file => file.Source.Text.Length)))
        {
            return false;
        }

        var files = ReplacedFiles.WithShown(draft.Asked.Files, change.At.File.Path, change.Applied());
        var after = RulebookReader.Read(draft.Asked.Path, files, draft.Asked.KnownOn, draft.Asked.Today)!.Problems.Where(other => other.Severity == Severity.Error).ToList();
        return after.Count < _errors && Fits(InItsLine(problem, change, 0, after), leavesOthers);
    }

    /// <summary>The first of many guesses that mends a problem; nothing where none does.</summary>
    public Proposal First(Diagnostic problem, TypedStatement statement, IEnumerable<Proposal> guesses, bool leavesOthers)
    {
        var place = new BlockPlace(statement);
        return guesses.Where(guess => place.Holds(guess) && Fits(InBlock(problem, place, guess), leavesOthers)).Take(MostReadings)
            .FirstOrDefault(guess => Mends(problem, guess, leavesOthers));
    }

    /// <summary>Whether other problems stand on the same line.</summary>
    public bool HasOthers(Diagnostic problem) => problems.Any(other => other.File == problem.File && other.Line == problem.Line && !ReferenceEquals(other, problem));

    private static bool Fits((int New, int Left) problems, bool leavesOthers) => problems.New == 0 && (problems.Left > 0) == leavesOthers;

    /// <summary>Reads the block by itself, with the names that the rulebook has. A guess that leads to a warning is no better than one that leads to an error.</summary>
    private (int New, int Left) InBlock(Diagnostic problem, BlockPlace place, Proposal guess)
    {
        var text = place.With(guess);
        if (!budget.Take(text.Length))
        {
            return (1, 0);
        }

        var found = new List<Diagnostic>();
        var context = new Context(draft.Names, found);
        foreach (var block in BlockReader.Read(LineSplitter.Split(Lexer.Lex(new SourceFile(problem.File, text))), draft.Phrases, found))
        {
            context.TellProblems(block);
        }

        return InItsLine(problem, guess, place.FirstLine - 1, found);
    }

    /// <summary>How many problems stand, after a change, in the statement that it touches: new ones, and ones that were there.</summary>
    /// <param name="problem">The error to be rid of.</param>
    /// <param name="change">The change.</param>
    /// <param name="shift">How many lines stand above the text in which <paramref name="after"/> was found.</param>
    /// <param name="after">The problems with the change made.</param>
    private (int New, int Left) InItsLine(Diagnostic problem, Proposal change, int shift, List<Diagnostic> after)
    {
        var (first, last) = draft.LinesOf(change.At);
        var before = problems.Where(other => other.File == problem.File && other.Line >= first && other.Line <= last && !ReferenceEquals(other, problem))
            .Select(other => (other.Code, other.Found)).ToList();
        var end = last - change.At.Text.Count(c => c == '\n') + change.Text.Count(c => c == '\n');
        var there = after.Where(other => other.File == problem.File && other.Line + shift >= first && other.Line + shift <= end).ToList();
        var added = there.Count(other => !before.Remove((other.Code, other.Found)));
        return (added, there.Count - added);
    }
}
