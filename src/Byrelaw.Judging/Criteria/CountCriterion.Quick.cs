namespace Byrelaw.Judging.Criteria;

/// <summary>Counting one kind of event in one window where nothing is in doubt.</summary>
internal sealed partial class CountCriterion
{
    private const int Few = 16;

    private readonly PlainWindow? _plain = windows.OnlyPlain;
    private readonly AnchoredWindow? _anchored = windows.Only as AnchoredWindow;
    private readonly int _quickKind = condition.Counted is [{ Answer: < 0 } only] ? only.Kind.Id : -1;
    private readonly Kleene[] _covered = ByCount(Limits.Of(condition.Test), isOpen: false);
    private readonly Kleene[] _open = ByCount(Limits.Of(condition.Test), isOpen: true);
    private readonly Truth _anythingGoes = Limits.Of(condition.Test).Accept(0, double.PositiveInfinity);

    public override void OnAll(int day, Span<Kleene> answers)
    {
        if (_quickKind >= 0 && _plain is not null)
        {
            AllInPlainWindow(day, answers);
            return;
        }

        for (var animal = 0; animal < answers.Length; animal++)
        {
            var until = int.MaxValue;
            if (!Quick(animal, day, ref until, out answers[animal]))
            {
                answers[animal] = On(animal, day, ref until, null);
            }
        }
    }

    /// <summary>The window is the same for the whole herd on one day, so it is worked out once.</summary>
    private void AllInPlainWindow(int day, Span<Kleene> answers)
    {
        var (low, high) = PlainWindow(day);
        var run = Days.Herd.Runs[_quickKind];
        var (starts, days, left) = (run.Starts, run.Days, Days.Left);
        var isSettled = low >= Days.SettledFrom(_quickKind) && high - low >= Few;
        var byCount = high > Days.KnownDay ? _open : _covered;
        for (var animal = 0; animal < answers.Length; animal++)
        {
            var start = starts[animal];
            var i = starts[animal + 1] - 1;
            while (i >= start && days[i] > high)
            {
                i--;
            }

            var count = 0;
            while (i >= start && days[i] >= low)
            {
                i--;
                count++;
            }

            var until = int.MaxValue;
            answers[animal] = isSettled && count < Few && left[animal] >= high ? byCount[count] : On(animal, day, ref until, null);
        }
    }

    private (int Low, int High) PlainWindow(int day) => (
        _plain!.LowMoves is { } moves ? moves.FirstReaching(day) : _plain.Low,
        _plain.HighMoves is { } lags ? lags.LastWithin(day) : day);

    protected override bool Quick(int animal, int day, ref int until, out Kleene answer)
    {
        answer = Kleene.Unknown;
        if (_quickKind < 0)
        {
            return false;
        }

        return _plain is not null ? InPlainWindow(animal, day, ref until, out answer)
            : _anchored is not null && SinceAnchor(animal, day, ref until, out answer);
    }

    private bool InPlainWindow(int animal, int day, ref int until, out Kleene answer)
    {
        answer = Kleene.Unknown;
        var (low, high) = PlainWindow(day);
        var left = Days.Left[animal];
        if (low < Days.SettledFrom(_quickKind) || high - low < Few || left < high)
        {
            return false;
        }

        var (count, first, next) = Between(animal, low, high);
        if (count >= Few)
        {
            return false;
        }

        // Until the next event comes in, the first goes out, she leaves, or days after the known day come in.
        var enters = Math.Min(next, left == Day.End ? int.MaxValue : left + 1);
        enters = high <= Days.KnownDay ? Math.Min(enters, Days.KnownDay + 1) : enters;
        if (enters != int.MaxValue)
        {
            until = Math.Min(until, (_plain!.HighMoves is null ? enters : _plain.HighMoves.After(enters)) - 1);
        }

        if (count > 0 && _plain!.LowMoves is not null)
        {
            until = Math.Min(until, _plain.LowMoves.After(first));
        }

        answer = (high > Days.KnownDay ? _open : _covered)[count];
        return true;
    }

    private bool SinceAnchor(int animal, int day, ref int until, out Kleene answer)
    {
        answer = Kleene.Unknown;
        var own = until;
        if (_anchored!.Anchor!.Has(_quickKind) || !_anchored.Anchor.IsPlain(animal, day, ref own, out var last))
        {
            return false;
        }

        var low = _anchored.LowFrom(last);
        if (low < Days.SettledFrom(_quickKind))
        {
            return false;
        }

        var (count, _, next) = Between(animal, low, day);
        if (count >= Few)
        {
            return false;
        }

        own = Math.Min(own, next - 1);
        if (day <= Days.KnownDay)
        {
            answer = _covered[count];
            until = Math.Min(own, Math.Min(Days.KnownDay, low > day ? low - 1 : Days.KnownDay));
            return true;
        }

        if (low > day || (count > 0 && LastOf(animal, day) > Days.KnownDay))
        {
            return false;
        }

        // Strictly, more may have happened today, and the anchor may have been on any day since the known day: then all of these came before it.
        var opens = _anchored.LowFrom(Days.KnownDay + 1);
        var strict = _limits.Accept(count, double.PositiveInfinity);
        var afresh = opens <= day ? _anythingGoes : _limits.Accept(0, 0);
        answer = Kleene.Of(_covered[count].Assumed, strict == afresh ? strict : Truth.Unknown);
        until = opens <= day ? own : Math.Min(own, opens - 1);
        return true;
    }

    private int LastOf(int animal, int day)
    {
        var run = Days.Herd.Runs[_quickKind];
        return run.Days[Runs.LastAtMost(run, animal, day)];
    }

    /// <summary>How many events there are in some days, the first of them, and the first after them (int.MaxValue for none).</summary>
    private (int Count, int First, int Next) Between(int animal, int low, int high)
    {
        var run = Days.Herd.Runs[_quickKind];
        var days = run.Days;
        var start = run.Starts[animal];
        var end = run.Starts[animal + 1];
        var last = Runs.LastAtMost(run, animal, high);
        var i = last;
        while (i >= start && days[i] >= low)
        {
            i--;
        }

        return (last - i, last > i ? days[i + 1] : int.MaxValue, last + 1 < end ? days[last + 1] : int.MaxValue);
    }

    /// <summary>The answers for a few events, with everything covered (strictly, unless a day of the window lies open).</summary>
    private static Kleene[] ByCount(Limits limits, bool isOpen)
    {
        var byCount = new Kleene[Few];
        for (var count = 0; count < Few; count++)
        {
            byCount[count] = Kleene.Of(limits.Accept(count, count), limits.Accept(count, isOpen ? double.PositiveInfinity : count));
        }

        return byCount;
    }
}
