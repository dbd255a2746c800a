namespace Byrelaw.Reporting.Causes;

/// <summary>One reason why rows of the records cannot be read: one word, unit or pattern that stands in all of them, and one mend.</summary>
/// <param name="Rows">The rows, in the order of the files; at least one.</param>
/// <param name="Animals">How many animals they are about.</param>
public sealed record ProblemCause(ImmutableArray<RowProblem> Rows, int Animals)
{
    /// <summary>How many animals it alone keeps in Ask, and how many there are on the lists; null where nobody has tried.</summary>
    public (int Kept, int Of)? AloneInAsk { get; init; }

    /// <summary>The first row's problem, which speaks for all.</summary>
    public Diagnostic First => Rows[0].Problem;
}
