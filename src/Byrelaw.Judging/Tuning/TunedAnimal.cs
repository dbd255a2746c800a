namespace Byrelaw.Judging.Tuning;

/// <summary>One animal's answer over every value of a number.</summary>
/// <param name="Animal">Her place in the herd.</param>
/// <param name="Number">Her number on the farm.</param>
/// <param name="Runs">By value, without gaps; neighbours differ.</param>
public sealed record TunedAnimal(int Animal, string Number, ImmutableArray<AnswerRun> Runs)
{
    /// <summary>Her answer at a value; values beyond what makes sense answer as the nearest that does.</summary>
    public Answer At(decimal value)
    {
        foreach (var run in Runs)
        {
            if (run.Range.To is not { } to || value <= to)
            {
                return run.Answer;
            }
        }

        return Runs[^1].Answer;
    }
}

/// <summary>Values with one answer.</summary>
public readonly record struct AnswerRun(ValueRange Range, Answer Answer);
