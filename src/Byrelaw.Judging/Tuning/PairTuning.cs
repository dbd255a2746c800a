namespace Byrelaw.Judging.Tuning;

/// <summary>Two numbers at once: how many may be used for values of both. Each cell is judged.</summary>
/// <param name="First">Down the side.</param>
/// <param name="Second">Along the top.</param>
/// <param name="Choice">The list.</param>
/// <param name="FirstValues">In order; the value in force is among them.</param>
/// <param name="SecondValues">The same.</param>
/// <param name="Cells">By first value, then second.</param>
public sealed record PairTuning(
    RuleNumber First, RuleNumber Second, Choice Choice, ImmutableArray<decimal> FirstValues, ImmutableArray<decimal> SecondValues, ImmutableArray<ImmutableArray<PairCell>> Cells);

/// <summary>One pair of values.</summary>
/// <param name="Ready">How many are Ready.</param>
/// <param name="OnCourse">How many are On course.</param>
/// <param name="Ask">How many have to be asked about.</param>
public readonly record struct PairCell(int Ready, int OnCourse, int Ask)
{
    /// <summary>Ready or On course.</summary>
    public int Usable => Ready + OnCourse;
}
