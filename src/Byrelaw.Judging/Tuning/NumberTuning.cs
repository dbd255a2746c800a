namespace Byrelaw.Judging.Tuning;

/// <summary>What one number does to one list, over every value that it may have.</summary>
/// <param name="Number">The number.</param>
/// <param name="Choice">The list, with its judging days.</param>
/// <param name="Animals">Every animal of the list, by number.</param>
/// <param name="Steps">By value, without gaps: from one to the next at least one animal's answer changes.</param>
public sealed record NumberTuning(RuleNumber Number, Choice Choice, ImmutableArray<TunedAnimal> Animals, ImmutableArray<TuningStep> Steps)
{
    /// <summary>The value in force.</summary>
    public decimal Current { get; } = Math.Round((decimal)Number.Number.Value, 6);

    /// <summary>Where the value in force stands in <see cref="Steps"/>.</summary>
    public int CurrentStep => StepAt(Current);

    /// <summary>The place of the step that holds a value.</summary>
    public int StepAt(decimal value)
    {
        for (var step = 0; step < Steps.Length - 1; step++)
        {
            if (Steps[step].Range.To is { } to && value <= to)
            {
                return step;
            }
        }

        return Steps.Length - 1;
    }

    /// <summary>A value of a step's that a person would write: the one in force, where it is of the step; else, in as few decimals as do, the nearest to it.</summary>
    public decimal ValueOf(int step) => PlainValue.In(Steps[step].Range, Current);

    /// <summary>Who answers differently in two steps.</summary>
    public IEnumerable<ChangedAnswer> Changes(int from, int to)
    {
        var (before, after) = (ValueOf(from), ValueOf(to));
        return Animals.Select(animal => new ChangedAnswer(animal, animal.At(before), animal.At(after))).Where(change => change.Before != change.After);
    }
}

/// <summary>An animal whose answer is another one at another value.</summary>
public sealed record ChangedAnswer(TunedAnimal Animal, Answer Before, Answer After)
{
    /// <summary>She may be used after it and not before.</summary>
    public bool IsLetIn => After.MayBeUsed() && !Before.MayBeUsed();

    /// <summary>She may be used before it and not after.</summary>
    public bool IsKeptOut => Before.MayBeUsed() && !After.MayBeUsed();
}
