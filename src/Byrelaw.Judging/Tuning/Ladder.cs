namespace Byrelaw.Judging.Tuning;

/// <summary>One number's values, one rung each: an animal is judged on every rung on which her answer may change. For one thread.</summary>
internal sealed class Ladder
{
    private readonly TriedValue[] _trials;
    private readonly Concluder?[] _rungs;
    private readonly Func<decimal, Concluder> _make;
    private readonly Concluder _still;

    public Ladder(Judge judge, Rulebook rulebook, RuleNumber number, Choice choice, JudgingDays days, HashSet<string> moved, TriedValue[] trials)
    {
        (_trials, _rungs) = (trials, new Concluder?[trials.Length]);
        var plan = judge.PlanOf(choice);
        var (moving, still) = (plan.Judged.OfType<RuleCriterion>().Where(rule => moved.Contains(rule.Rule.Name)).ToArray(), new List<Criterion>());
        still.AddRange(plan.Judged.Where(one => !moving.Contains(one)));
        var together = new ListCriterion([.. still], still.Count);
        _still = new Concluder([.. still], together, days);
        var remembered = new RememberedCriterion(together, days);
        var now = moving.Where(rule => rule.Rule.IsSafety).ToDictionary(rule => rule.Rule.Name, rule => new RememberedCriterion(rule, days));

        // Only the rules that the number moves are made ready anew for each value.
        var names = moving.Select(rule => rule.Rule.Name).ToHashSet();
        rulebook = rulebook with { Rules = [.. rulebook.Rules.Where(rule => names.Contains(rule.Name))] };
        _make = value =>
        {
            var changed = rulebook.With(number, value);
            var compiler = new CriterionCompiler(judge.Days, changed, isShared: false);
            Criterion[] criteria =
            [
                remembered,
                .. moving.Select(rule => Moved(changed.Rules.First(other => other.Name == rule.Rule.Name))),
            ];

            // What a safety rule asks now it asks at every value: that is worked out once for each animal.
            Criterion Moved(Rule rule) => rule.Besides is { IsTried: true } tried
                ? new ListCriterion([now[rule.Name], ListPlan.Compile(rule with { Needs = tried.Here, Besides = null }, compiler, judge.Days, changed, choice)], 2)
                : ListPlan.Compile(rule, compiler, judge.Days, changed, choice);

            // Whoever gets here is not barred by any of what stands still.
            return new Concluder(criteria, new ListCriterion(criteria, criteria.Length), days, turning: 1);
        };
    }

    /// <summary>Judges one animal at every value.</summary>
    /// <param name="animal">Her place in the herd.</param>
    /// <param name="number">Her number on the farm.</param>
    /// <param name="enough">A value after which nothing of her changes any more.</param>
    public TunedAnimal Climb(int animal, string number, int enough)
    {
        var runs = ImmutableArray.CreateBuilder<AnswerRun>();

        // What no value of this number moves already says No for good.
        var isBarred = _still.IsBarred(animal);
        for (var place = 0; place < _trials.Length; place++)
        {
            var trial = _trials[place];
            var answer = isBarred ? Answer.No
                : place > 0 && trial.Value > enough ? runs[^1].Answer
                : (_rungs[place] ??= _make(trial.Value)).AnswerOf(animal, out _, out _, out _);
            if (runs.Count > 0 && runs[^1].Answer == answer)
            {
                runs[^1] = new AnswerRun(new ValueRange(runs[^1].Range.From, trial.Range.To), answer);
            }
            else
            {
                runs.Add(new AnswerRun(trial.Range, answer));
            }
        }

        return new TunedAnimal(animal, number, runs.ToImmutable());
    }
}
