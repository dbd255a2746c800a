namespace Byrelaw.Judging.Tuning;

/// <summary>Values at which every animal of the list has one answer.</summary>
/// <param name="Range">The values.</param>
/// <param name="Counts">How many have each answer, in the order of <see cref="Answer"/>.</param>
public sealed record TuningStep(ValueRange Range, ImmutableArray<int> Counts)
{
    /// <summary>How many have an answer.</summary>
    public int Count(Answer answer) => Counts[(int)answer];

    /// <summary>How many may be used: Ready or On course.</summary>
    public int Usable => Count(Answer.Ready) + Count(Answer.OnCourse);
}
