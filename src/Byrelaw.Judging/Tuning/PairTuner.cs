namespace Byrelaw.Judging.Tuning;

/// <summary>
/// Judges a list with two numbers changed at once. Its rows and columns are the values at which one number changes who may be used while the
/// rules of the other are out of the way: an animal that both rules keep out is let in by neither alone.
/// </summary>
/// <param name="rulebook">Its vocabulary must be the herd's.</param>
/// <param name="herd">The records.</param>
/// <param name="choice">The list.</param>
internal sealed class PairTuner(Rulebook rulebook, Herd herd, Choice choice)
{
    private const int EachWay = 4;

    /// <summary>The table.</summary>
    public PairTuning Tune(RuleNumber first, RuleNumber second)
    {
        var (down, along) = (Values(first, second), Values(second, first));
        return new PairTuning(first, second, choice, down, along, [.. down.Select(a => along.Select(b => Cell(a, b)).ToImmutableArray())]);

        PairCell Cell(decimal a, decimal b)
        {
            var answers = new Judge(rulebook.With(first, a).With(second, b), herd).Answers(choice).Answers;
            return new PairCell(answers.Count(answer => answer == Answer.Ready), answers.Count(answer => answer == Answer.OnCourse), answers.Count(answer => answer == Answer.Ask));
        }
    }

    /// <summary>The value in force, and the nearest few each way at which others may be used.</summary>
    private ImmutableArray<decimal> Values(RuleNumber number, RuleNumber other)
    {
        var values = new SortedSet<decimal>();
        foreach (var tuning in WithoutTheOther(number, other).Select(changed => new NumberTuner(changed, herd).Tune(number, choice)))
        {
            values.Add(tuning.Current);
            values.UnionWith(UsableBands.Below(tuning).Concat(UsableBands.Above(tuning)).Select(tuning.ValueOf));
        }

        var now = Math.Round((decimal)number.Number.Value, 6);
        return [.. values.Where(value => value < now).TakeLast(EachWay), now, .. values.Where(value => value > now).Take(EachWay)];
    }

    /// <summary>The rulebook without the rules that the other number moves; where both move one rule, with the other number at each of its own values that matter.</summary>
    private IEnumerable<Rulebook> WithoutTheOther(RuleNumber number, RuleNumber other)
    {
        var theirs = MovedBy.Rules(rulebook, other).Select(rule => rule.Name).ToHashSet();
        if (!MovedBy.Rules(rulebook, number).Any(rule => theirs.Contains(rule.Name)))
        {
            return [rulebook with { Rules = [.. rulebook.Rules.Where(rule => !theirs.Contains(rule.Name))] }];
        }

        var tuning = new NumberTuner(rulebook, herd).Tune(other, choice);
        return UsableBands.Below(tuning).Take(EachWay).Concat(UsableBands.Above(tuning).Take(EachWay)).Append(tuning.CurrentStep)
            .Select(step => rulebook.With(other, tuning.ValueOf(step)));
    }
}
