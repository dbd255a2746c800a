using Byrelaw.Judging.Criteria;
using Byrelaw.Judging.Truths;
using Byrelaw.Judging.Verdicts;

namespace Byrelaw.Judging.Lists;

/// <summary>Comes to the answer for an animal, as "Answers" in the language reference defines it.</summary>
internal sealed class Concluder(ListPlan plan, JudgingDays days)
{
    private readonly StepLine _all = new();
    private readonly StepLine _one = new();

    /// <summary>The timeline of all rules together, of the animal last concluded.</summary>
    public StepLine All => _all;

    public Conclusion Conclude(int animal)
    {
        _all.Trace(plan.All, animal, days.SpanFirst, days.SpanLast);
        var judged = _all.Over(days.First, days.Last);
        switch (judged.Assumed)
        {
            case Truth.True:
                var (from, until) = _all.TrueAround(days.First);
                return new Conclusion(judged.IsExpected ? Answer.OnCourse : Answer.Ready, from, until, int.MaxValue);
            case Truth.Unknown:
                return Conclusion.Without(Answer.Ask);
        }

        if (SomeRuleNeverTurns(animal))
        {
            return Conclusion.Without(Answer.No);
        }

        var later = _all.FirstRun(days.First + 1, days.Length, mayBeUnknown: false, out var laterUntil);
        if (later != int.MaxValue)
        {
            return new Conclusion(Answer.Later, later, laterUntil, int.MaxValue);
        }

        var maybe = _all.FirstRun(days.First + 1, days.Length, mayBeUnknown: true, out _);
        return maybe != int.MaxValue ? Conclusion.Without(Answer.Ask, maybe) : Conclusion.Without(Answer.No);
    }

    /// <summary>Whether a gate or rule fails on the judging days and holds on no later ones of the span.</summary>
    private bool SomeRuleNeverTurns(int animal)
    {
        if (NeverTurns(plan.Presence, animal) || NeverTurns(plan.Sort, animal))
        {
            return true;
        }

        foreach (var rule in plan.Rules)
        {
            if (!rule.Rule.OnTheDay && !rule.Rule.IsBroken && NeverTurns(rule, animal))
            {
                return true;
            }
        }

        return false;
    }

    private bool NeverTurns(Criterion criterion, int animal)
    {
        // Most rules hold on the judging days; ask those days first, the whole span only if need be.
        var judged = Kleene.True;
        for (var day = days.First; day <= days.Last;)
        {
            var until = int.MaxValue;
            judged &= criterion.On(animal, day, ref until, null);
            day = until >= days.Last ? days.Last + 1 : Math.Max(until, day) + 1;
        }

        if (!judged.IsFalse)
        {
            return false;
        }

        _one.Trace(criterion, animal, days.First, days.SpanLast);
        return _one.FirstRun(days.First + 1, days.Length, mayBeUnknown: false, out _) == int.MaxValue;
    }
}
