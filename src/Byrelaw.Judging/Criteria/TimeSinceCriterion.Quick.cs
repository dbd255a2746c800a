namespace Byrelaw.Judging.Criteria;

/// <summary>Time since one kind of event where nothing is in doubt.</summary>
internal sealed partial class TimeSinceCriterion
{
    public override void OnAll(int day, Span<Kleene> answers)
    {
        for (var animal = 0; animal < answers.Length; animal++)
        {
            var until = int.MaxValue;
            if (!Quick(animal, day, ref until, out answers[animal]))
            {
                answers[animal] = On(animal, day, ref until, null);
            }
        }
    }

    protected override bool Quick(int animal, int day, ref int until, out Kleene answer)
    {
        answer = Kleene.Unknown;
        if (_limits.MayAcceptNone && day > Days.KnownDay)
        {
            return false;
        }

        if (!anchor.IsPlain(animal, day, ref until, out var last))
        {
            return false;
        }

        var (low, high) = _limits.Accepted(day);
        var truth = last >= low && last <= high ? Truth.True : Truth.False;
        until = Math.Min(until, _limits.NextTurn(last, day) - 1);
        var open = Days.KnownDay + 1;
        if (day < open)
        {
            until = Math.Min(until, Days.KnownDay);
            answer = Kleene.Of(truth);
            return true;
        }

        // Strictly, it may have happened again on any day since the known day.
        until = Math.Min(until, _limits.NextTurn(Math.Max(open, last + 1), day) - 1);
        var strict = truth == Truth.True
            ? (day <= high || last == day ? Truth.True : Truth.Unknown)
            : (Math.Max(low, Math.Max(open, last + 1)) <= Math.Min(high, day) ? Truth.Unknown : Truth.False);
        answer = Kleene.Of(truth, strict);
        return true;
    }
}
