namespace Byrelaw.Judging.Tuning;

/// <summary>
/// Finds out what each value of a number would answer. The values at which an answer can change are worked out from the
/// records (<see cref="EnoughTime"/>, <see cref="EnoughCounts"/>, <see cref="ComparedValues"/>); between two of them none can, so one
/// value of each range is judged, by the code that judges everything else.
/// </summary>
public sealed class NumberTuner
{
    private readonly Rulebook _rulebook;
    private readonly Judge _judge;

    /// <summary>Prepares a rulebook (which must have a programme) and a herd.</summary>
    /// <param name="rulebook">Its vocabulary must be the herd's.</param>
    /// <param name="herd">The records.</param>
    public NumberTuner(Rulebook rulebook, Herd herd)
    {
        _rulebook = rulebook;
        _judge = new Judge(rulebook, herd);
    }

    /// <summary>One number, on one list.</summary>
    /// <param name="number">A number of a rule of the rulebook.</param>
    /// <param name="choice">The list whose animals are counted; of the programme.</param>
    /// <param name="progress">Told how many animals are done, of how many.</param>
    public NumberTuning Tune(RuleNumber number, Choice choice, IProgress<(int Done, int Of)>? progress = null)
    {
        ArgumentNullException.ThrowIfNull(number);
        ArgumentNullException.ThrowIfNull(choice);
        var (candidates, days) = (_judge.CandidatesOf(choice, null).Animals, _judge.DaysOf(choice));
        var moved = MovedBy.Rules(_rulebook, number).Where(rule => rule.IsFor(choice.List) && ListPlan.IsJudged(rule)).Select(rule => rule.Name).ToHashSet();
        var time = number.Number.Sort == NumberSort.Time ? new EnoughTime(_judge.Days.Herd, _rulebook.Programme!, number, days) : null;
        var trials = time is not null ? TrialValues.Whole(number.Number, candidates.Select(time.For).Append(0).Max())
            : number.Number.IsWhole ? TrialValues.Whole(number.Number, EnoughCounts.For(_judge.Days.Herd, number))
            : TrialValues.Between(number.Number, new ComparedValues(_judge.Days, days, number).All());
        var animals = new TunedAnimal[candidates.Length];
        var done = 0;
        Judge.Divided(candidates.Length, (from, to) =>
        {
            var ladder = new Ladder(_judge, _rulebook, number, choice, days, moved, trials);
            for (var i = from; i < to; i++)
            {
                animals[i] = ladder.Climb(candidates[i], _judge.Days.Herd.Numbers[candidates[i]], time?.For(candidates[i]) ?? int.MaxValue);
                progress?.Report((Interlocked.Increment(ref done), candidates.Length));
            }
        });
        return new NumberTuning(number, choice, [.. animals], TuningSteps.Of(animals, trials));
    }

    /// <summary>Who is next to the value in force, and what they have in common.</summary>
    /// <param name="tuning">A number, tuned.</param>
    /// <param name="judged">The same list as it is judged now.</param>
    public ImmutableArray<MarginGroup> Margins(NumberTuning tuning, ListJudgement judged)
    {
        ArgumentNullException.ThrowIfNull(tuning);
        ArgumentNullException.ThrowIfNull(judged);
        return MarginGroups.Of(tuning, judged, new Traits(_judge.Days, tuning.Number, tuning.Choice));
    }
}
