namespace Byrelaw.Judging.Criteria;

/// <summary>The latest result where nothing is in doubt but the result.</summary>
internal abstract partial class LookupCriterion
{
    private readonly PlainWindow? _plain = windows.OnlyPlain;
    private readonly AnchoredWindow? _anchored = windows.Only as AnchoredWindow;

    /// <summary>Whether this asks for the latest result, with the same limits for all.</summary>
    protected abstract bool IsQuick { get; }

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

    protected sealed override bool Quick(int animal, int day, ref int until, out Kleene answer)
    {
        answer = Kleene.Unknown;
        if (!IsQuick || Days.Coverage.HasGaps[KindId] || (_plain is null && _anchored is null))
        {
            return false;
        }

        var own = until;
        int low, high = day;
        if (_plain is not null)
        {
            low = _plain.LowMoves is { } moves ? moves.FirstReaching(day) : _plain.Low;
            high = _plain.HighMoves is { } lags ? lags.LastWithin(day) : day;
        }
        else if (!_anchored!.Anchor!.Has(KindId) && _anchored.Anchor.IsPlain(animal, day, ref own, out var anchor))
        {
            low = _anchored.LowFrom(anchor);
            own = day <= Days.KnownDay ? Math.Min(own, Days.KnownDay) : own;
        }
        else
        {
            return false;
        }

        var start = Run.Starts[animal];
        var last = Runs.LastAtMost(Run, animal, high);
        if (last > start && Run.Days[last - 1] == Run.Days[last])
        {
            return false;
        }

        if (last + 1 < Run.Starts[animal + 1])
        {
            var next = Run.Days[last + 1];
            own = Math.Min(own, (_plain?.HighMoves is { } lags ? lags.After(next) : next) - 1);
        }

        if (last >= start && Run.Days[last] >= low)
        {
            if (_plain?.LowMoves is { } moves)
            {
                own = Math.Min(own, moves.After(Run.Days[last]));
            }

            var pending = false;
            var truth = TruthOf(animal, last, ref pending, null);

            // Strictly, the anchor may have been today, and the result too early.
            var strict = _anchored is not null && day > Days.KnownDay && Run.Days[last] < _anchored.LowFrom(day) ? Truth.Unknown : truth;
            answer = Kleene.Of(truth, strict, pending);
        }

        until = own;
        return true;
    }
}
