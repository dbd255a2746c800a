namespace Byrelaw.Judging.Tuning;

/// <summary>One rule on one list: each of its numbers over all its values, and some of them two at a time.</summary>
/// <param name="Rulebook">The rules.</param>
/// <param name="Herd">The records.</param>
/// <param name="Rule">The rule, in force.</param>
/// <param name="Judged">The list as it is judged now.</param>
/// <param name="Numbers">Its numbers, at least one.</param>
/// <param name="Pairs">Two numbers at once; none unless that was asked for.</param>
public sealed record RuleTuning(
    Rulebook Rulebook, Herd Herd, Rule Rule, ListJudgement Judged, ImmutableArray<TunedNumber> Numbers, ImmutableArray<PairTuning> Pairs);

/// <summary>One number, tuned.</summary>
/// <param name="Tuning">Over all its values.</param>
/// <param name="Margins">Who is next to the value in force.</param>
public sealed record TunedNumber(NumberTuning Tuning, ImmutableArray<MarginGroup> Margins)
{
    /// <summary>The number.</summary>
    public RuleNumber Number => Tuning.Number;
}

/// <summary>Tunes every number of a rule.</summary>
public static class RuleTuner
{
    /// <summary>All numbers of a rule on one list.</summary>
    /// <param name="rulebook">It has a programme, and its vocabulary is the herd's.</param>
    /// <param name="herd">The records.</param>
    /// <param name="rule">The rule.</param>
    /// <param name="choice">The list.</param>
    /// <param name="with">Another rule, or the same, each of whose numbers is paired with each of the first's; null for none.</param>
    /// <param name="progress">Told how much is done, of how much.</param>
    public static RuleTuning Tune(Rulebook rulebook, Herd herd, Rule rule, Choice choice, Rule? with = null, IProgress<(int Done, int Of)>? progress = null)
    {
        ArgumentNullException.ThrowIfNull(rulebook);
        ArgumentNullException.ThrowIfNull(choice);
        var tuner = new NumberTuner(rulebook, herd);
        var judged = new Judge(rulebook, herd).JudgeAll().Lists.First(list => list.Choice.List == choice.List);
        ImmutableArray<TunedNumber> numbers =
        [
            .. NumbersOfRule.Of(rulebook, rule).Select(number => tuner.Tune(number, choice, progress)).Select(tuning => new TunedNumber(tuning, tuner.Margins(tuning, judged))),
        ];
        return new RuleTuning(rulebook, herd, rule, judged, numbers, with is null ? [] : Pairs(with));

        ImmutableArray<PairTuning> Pairs(Rule other)
        {
            var (pairs, done) = (new PairTuner(rulebook, herd, choice), new HashSet<string>());
            return
            [
                .. from a in numbers.Select(number => number.Number)
                   from b in NumbersOfRule.Of(rulebook, other)
                   where a.Key != b.Key && done.Add(string.Join(" and ", new[] { $"{a.Key}", $"{b.Key}" }.Order(StringComparer.Ordinal)))
                   select pairs.Tune(a, b),
            ];
        }
    }
}
