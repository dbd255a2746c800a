namespace Byrelaw.Judging.Lists;

/// <summary>Writes down all that is said of one animal on one list. For one thread.</summary>
internal sealed class AnimalExplainer(ListPlan plan, JudgingDays days, LocalDate? lastTransfer)
{
    private readonly DayTimeline _all = new();
    private readonly Concluder _concluder = new(plan, days);
    private readonly RuleExplainer _rules = new(plan, days);
    private readonly Settling _settling = new(plan, days);

    public AnimalJudgement Explain(int animal)
    {
        var conclusion = _concluder.Conclude(animal);
        _all.Trace(plan.All, animal, days.SpanFirst, days.SpanLast);
        var timeline = _all.ToTimeline();
        var rules = ImmutableArray.CreateBuilder<RuleJudgement>(plan.Rules.Length + 2);
        rules.Add(_rules.InTheHerd(animal));
        rules.Add(_rules.OfTheRightSort(animal));
        foreach (var rule in plan.Rules)
        {
            var judged = _rules.Rule(rule, animal);
            rules.Add(rule.Rule.IsSafety && plan.Floor.Cover.Value.Covers(rule.Rule) ? judged with { AsksTheFloor = true } : judged);
        }

        foreach (var rule in plan.Floor.Standing(rules, rule => _rules.TruthOf(rule, animal)).ToList())
        {
            rules.Add(_rules.Rule(rule, animal) with { AsksTheFloor = true });
        }

        foreach (var part in plan.BrokenParts)
        {
            rules.Add(Unread(part, timeline));
        }

        var (prefers, score) = Prefers(animal);
        return new AnimalJudgement
        {
            Animal = animal,
            Number = plan.Days.Herd.Numbers[animal],
            Sort = plan.Sorts.On(animal, days.First),
            Answer = conclusion.Answer,
            ReadyFrom = conclusion.ReadyFrom == int.MaxValue ? null : Day.Date(conclusion.ReadyFrom),
            ReadyUntil = conclusion.ReadyUntil == int.MaxValue || conclusion.ReadyUntil == days.SpanLast ? null : Day.Date(conclusion.ReadyUntil),
            NotBefore = conclusion.NotBefore == int.MaxValue ? null : Day.Date(conclusion.NotBefore),
            TooLate = conclusion.Answer == Answer.Later && lastTransfer is { } last && Math.Min(conclusion.ReadyFrom, conclusion.NotBefore) > Day.Number(last),
            ForGood = conclusion.Answer == Answer.No && rules.Any(rule => rule.ForGood && rule.Rule?.OnTheDay != true),
            NeverTogether = conclusion.Answer == Answer.No ? NeverTogether.Find(rules, days) : [],
            Rules = rules.ToImmutable(),
            InCalf = plan.Floor.Of(rule => _rules.TruthOf(rule, animal)),
            Prefers = prefers,
            Score = score,
            Settle = conclusion.Answer == Answer.Ask ? _settling.OnJudgingDays(animal, rules) : [],
            Open = conclusion.Answer == Answer.Ask ? _settling.Questions(animal, rules) : [],
            ThenAsk = conclusion.NotBefore != int.MaxValue ? _settling.OnStretch(animal, rules, conclusion.NotBefore) : [],
            Timeline = timeline,
        };
    }

    private (ImmutableArray<PreferJudgement> Prefers, double Score) Prefers(int animal)
    {
        var prefers = ImmutableArray.CreateBuilder<PreferJudgement>(plan.Prefers.Length);
        double score = 0;
        foreach (var (prefer, condition) in plan.Prefers)
        {
            var notes = new Notes(plan.Days, animal);
            var until = int.MaxValue;
            var truth = condition.On(animal, days.First, ref until, notes).Assumed;
            prefers.Add(new PreferJudgement(prefer, truth, notes.Findings));
            score += truth == Truth.True ? prefer.Counts : 0;
        }

        return (prefers.ToImmutable(), Math.Round(score, 9));
    }

    /// <summary>Lines that may have been a rule: shown as a broken one.</summary>
    private static RuleJudgement Unread(BrokenPart part, Timeline timeline) => new()
    {
        Name = $"{part.Span.File.Path} line {part.Span.Line}",
        Rule = null,
        Answer = RuleAnswer.Broken,
        Timeline = timeline with { Stretches = [new Stretch(timeline.First, Truth.Unknown, false)] },
    };
}
