namespace Byrelaw.Judging.Lists;

/// <summary>Comes to the answer for an animal, as "Answers" in the language reference defines it, looking no
/// further than the answer needs: most animals are settled on the judging days themselves.</summary>
/// <param name="judged">What is judged, one by one.</param>
/// <param name="all">All of it together.</param>
/// <param name="days">The judging days.</param>
/// <param name="isSupposed">Rows of days to come are only supposed: nothing is sure.</param>
/// <param name="turning">So many of the first are known not to say No by themselves.</param>
internal sealed class Concluder(Criterion[] judged, Criterion all, JudgingDays days, int turning = 0, bool isSupposed = false)
{
    private readonly DayTimeline _line = new();
    private readonly Kleene[] _each = new Kleene[judged.Length];

    public Concluder(ListPlan plan, JudgingDays days)
        : this(plan.Judged, plan.All, days, isSupposed: plan.IsSupposed)
    {
    }

    /// <summary>The whole conclusion.</summary>
    public Conclusion Conclude(int animal)
    {
        var answer = AnswerOf(animal, out var later, out var laterUntil, out var maybe);
        if (!answer.MayBeUsed())
        {
            return answer == Answer.Later ? new Conclusion(answer, later, laterUntil, maybe < later ? maybe : int.MaxValue) : Conclusion.Without(answer);
        }

        _line.Trace(all, animal, days.SpanFirst, days.SpanLast);
        var (from, until) = _line.TrueAround(days.First);
        return new Conclusion(answer, from, until, int.MaxValue);
    }

    /// <summary>The answer alone, and where it looks ahead what it found there: the first later stretch on which all rules hold, and the first on
    /// which none fails (never after the other).</summary>
    public Answer AnswerOf(int animal, out int later, out int laterUntil, out int maybe)
    {
        (later, laterUntil, maybe) = (int.MaxValue, 0, int.MaxValue);
        var together = Kleene.True;
        for (var i = 0; i < _each.Length; i++)
        {
            _each[i] = OverJudgingDays(judged[i], animal);
            together &= _each[i];
        }

        switch (together.Assumed)
        {
            case Truth.True:
                return together.IsExpected || isSupposed ? Answer.OnCourse : Answer.Ready;
            case Truth.Unknown:
                return Answer.Ask;
        }

        if (SomeRuleNeverTurns(animal))
        {
            return Answer.No;
        }

        _line.Trace(all, animal, days.First, days.SpanLast);
        later = _line.LaterStretch(days, mayBeUnknown: false, out laterUntil);
        maybe = _line.LaterStretch(days, mayBeUnknown: true, out _);
        return maybe != int.MaxValue ? Answer.Later : Answer.No;
    }

    /// <summary>Whether one of these criteria by itself makes the answer No, whatever others there may be besides.</summary>
    public bool IsBarred(int animal)
    {
        for (var i = 0; i < _each.Length; i++)
        {
            _each[i] = OverJudgingDays(judged[i], animal);
        }

        return SomeRuleNeverTurns(animal);
    }

    private Kleene OverJudgingDays(Criterion criterion, int animal) => Over(criterion, animal, days.First, days.Last);

    /// <summary>A criterion's answer over some days in a row.</summary>
    public static Kleene Over(Criterion criterion, int animal, int first, int last)
    {
        var all = Kleene.True;
        for (var day = first; ;)
        {
            var until = int.MaxValue;
            all &= criterion.On(animal, day, ref until, null);
            if (until >= last)
            {
                return all;
            }

            day = Math.Max(until, day) + 1;
            if (day > last)
            {
                return all;
            }
        }
    }

    /// <summary>Whether a gate or rule is stuck: it fails on the judging days and holds on no later stretch of the span.</summary>
    private bool SomeRuleNeverTurns(int animal)
    {
        for (var i = turning; i < _each.Length; i++)
        {
            if (_each[i].IsFalse)
            {
                _line.Trace(judged[i], animal, days.First, days.SpanLast);
                if (_line.LaterStretch(days, mayBeUnknown: false, out _) == int.MaxValue)
                {
                    return true;
                }
            }
        }

        return false;
    }
}
