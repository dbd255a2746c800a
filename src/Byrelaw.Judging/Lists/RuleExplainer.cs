namespace Byrelaw.Judging.Lists;

/// <summary>Writes down what one gate or rule says of one animal, and why.</summary>
internal sealed class RuleExplainer(ListPlan plan, JudgingDays days)
{
    private readonly DayTimeline _line = new();

    public RuleJudgement InTheHerd(int animal)
    {
        var (truth, day) = Trace(plan.Presence, animal);
        var notes = new Notes(plan.Days, animal);
        var until = int.MaxValue;
        plan.Presence.On(animal, day, ref until, notes);
        return Gate(Verdicts.Gate.InTheHerd, "In the herd", truth) with { GateEvidence = notes.Evidence };
    }

    public RuleJudgement OfTheRightSort(int animal)
    {
        var (truth, _) = Trace(plan.Sort, animal);
        var name = plan.SortAudience switch { Audience.Cows => "Cow", Audience.Heifers => "Heifer", _ => "Female" };
        return Gate(Verdicts.Gate.OfTheRightSort, name, truth);
    }

    public RuleJudgement Rule(RuleCriterion criterion, int animal)
    {
        var rule = criterion.Rule;
        var (truth, _) = Trace(criterion, animal);
        var timeline = _line.ToTimeline();
        var judgement = new RuleJudgement
        {
            Name = rule.Name,
            Rule = rule,
            Answer = RuleAnswer.Broken,
            Timeline = timeline,
        };
        if (rule.IsBroken)
        {
            return judgement;
        }

        var notes = new Notes(plan.Days, animal);
        var until = int.MaxValue;
        var day = criterion.DayThatShows(truth, animal, days.First, days.Last);
        var plain = criterion.Plain(animal, day, out var applies, ref until, notes);
        var waiver = plain.IsTrue ? null : criterion.WaiverOn(animal, day);
        var answer = truth == Truth.True && applies == Truth.False && NeverApplies(criterion, animal) ? RuleAnswer.DoesNotApply : ToAnswer(truth);
        var turns = truth == Truth.False ? _line.LaterStretch(days, false, out _) : int.MaxValue;
        return judgement with
        {
            Answer = answer,
            Expected = _line.Over(days.First, days.Last).IsExpected,
            Findings = notes.Findings,
            Ways = answer == RuleAnswer.NotKnown ? WithDays(notes) : [],
            Remedies = answer == RuleAnswer.NotMet ? notes.WaysToTurn.Sets : [],
            FoundOn = day > days.Last ? Day.Date(day) : null,
            Waiver = waiver,
            Replaced = waiver is null && criterion.Replaced(plain).Assumed != plain.Assumed ? rule.IfNotKnown : IfNotKnown.Ask,
            ChangesOn = NextChange(truth),
            TurnsOn = DateOrNull(turns),
            ForGood = truth == Truth.False && turns == int.MaxValue && notes.IsForGood,
            IsShaky = answer == RuleAnswer.Met && waiver is null && (LapsesSoon() || IsAtTheLimit(notes)),
        };
    }

    /// <summary>Each way with all that its records must be: on which days, by which method.</summary>
    private static ImmutableArray<ImmutableArray<Missing>> WithDays(Notes notes)
    {
        List<Missing> all = [.. notes.Findings.Where(finding => finding.Decides).SelectMany(finding => finding.Missing).Distinct()];
        return [.. notes.WaysToSettle.Sets.Select(way => all.Where(missing => way.Contains(Notes.OneThing(missing))).ToImmutableArray()).Where(way => !way.IsEmpty)];
    }

    /// <summary>What a rule answers over the judging days.</summary>
    public Truth TruthOf(RuleCriterion criterion, int animal)
    {
        var all = Kleene.True;
        for (var day = days.First; day <= days.Last;)
        {
            var until = int.MaxValue;
            all &= criterion.On(animal, day, ref until, null);
            day = until >= days.Last ? days.Last + 1 : Math.Max(until, day) + 1;
        }

        return all.Assumed;
    }

    /// <summary>Whether she is on no judging day one that the rule is for.</summary>
    private bool NeverApplies(RuleCriterion criterion, int animal)
    {
        for (var day = days.First; day <= days.Last; day++)
        {
            if (MayApply(criterion, animal, day))
            {
                return false;
            }
        }

        return days.First >= criterion.AlsoOn || !MayApply(criterion, animal, criterion.AlsoOn);
    }

    private static bool MayApply(RuleCriterion criterion, int animal, int day)
    {
        var until = int.MaxValue;
        criterion.Plain(animal, day, out var applies, ref until, null);
        return applies != Truth.False;
    }

    /// <summary>The answer over the judging days, and the first of them that decides it.</summary>
    private (Truth Truth, int Day) Trace(Criterion criterion, int animal)
    {
        _line.Trace(criterion, animal, days.SpanFirst, days.SpanLast);
        var truth = _line.Over(days.First, days.Last).Assumed;
        for (var step = 0; step < _line.Count; step++)
        {
            if (_line.To(step) >= days.First && _line.From(step) <= days.Last && _line[step].Assumed == truth)
            {
                return (truth, Math.Max(days.First, _line.From(step)));
            }
        }

        return (truth, days.First);
    }

    private RuleJudgement Gate(Gate gate, string name, Truth truth)
    {
        var turns = truth == Truth.False ? _line.LaterStretch(days, false, out _) : int.MaxValue;
        return new RuleJudgement
        {
            Name = name,
            Rule = null,
            Gate = gate,
            Answer = ToAnswer(truth),
            Expected = _line.Over(days.First, days.Last).IsExpected,
            ChangesOn = NextChange(truth),
            TurnsOn = DateOrNull(turns),
            ForGood = truth == Truth.False && turns == int.MaxValue,
            Timeline = _line.ToTimeline(),
        };
    }

    /// <summary>The first day from the judging days on with another answer.</summary>
    private LocalDate? NextChange(Truth truth)
    {
        for (var step = 0; step < _line.Count; step++)
        {
            if (_line.To(step) >= days.First && _line[step].Assumed != truth)
            {
                return DateOrNull(Math.Max(_line.From(step), days.First));
            }
        }

        return null;
    }

    private bool LapsesSoon() => !_line.Over(days.First, days.Last + Shaky.Days).IsTrue;

    private static bool IsAtTheLimit(Notes notes)
    {
        foreach (var finding in notes.Findings)
        {
            if (finding is { Decides: true, Inverted: false, Margin: 0 }
                && finding.Condition is { Demand: TimeTest } or MeasuredCondition or MobMeasuredCondition)
            {
                return true;
            }
        }

        return false;
    }

    private static RuleAnswer ToAnswer(Truth truth) => truth switch
    {
        Truth.True => RuleAnswer.Met,
        Truth.False => RuleAnswer.NotMet,
        _ => RuleAnswer.NotKnown,
    };

    private static LocalDate? DateOrNull(int day) => day == int.MaxValue ? null : Day.Date(day);
}
