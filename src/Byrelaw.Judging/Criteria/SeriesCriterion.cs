namespace Byrelaw.Judging.Criteria;

/// <summary><c>average cell count of the last 3 results less than 200 kcells/mL</c>, <c>every BVD virus in the last 90 days is negative</c>.</summary>
internal sealed class SeriesCriterion(HerdDays days, SeriesCondition condition, WindowSet windows) : LookupCriterion(days, condition, condition.Of, windows)
{
    private readonly NumberLimits? _test = condition.Test is { } test ? new NumberLimits(days, test) : null;
    private readonly string? _unit = (condition.Of as MeasureKind)?.Unit?.Symbol;
    private Limits _limits = new(double.NegativeInfinity, double.PositiveInfinity);

    protected override bool IsLimitKnown => _test is null || _limits.IsKnown;

    protected override bool IsQuick => false;

    protected override Kleene Look(int animal, int day, in WindowSet.Reading reading, Bounds bounds, ref int until, Notes? notes)
    {
        _limits = _test?.For(animal, notes) ?? _limits;
        var pending = false;
        var recorded = Over(animal, bounds.From(bounds.Low), ref pending, notes);
        if (bounds.IsStrictlyCertain || recorded == Truth.Unknown)
        {
            return Kleene.Of(recorded, pending);
        }

        until = day;
        var assumed = bounds.IsCertain ? recorded : ForEveryAnchor(animal, day, strict: false, reading, recorded, ref pending);
        return Kleene.Of(assumed, ForEveryAnchor(animal, day, strict: true, reading, recorded, ref pending), pending);
    }

    /// <summary>The answer stands only if it is the same for every day on which the anchor may have been.</summary>
    private Truth ForEveryAnchor(int animal, int day, bool strict, in WindowSet.Reading reading, Truth recorded, ref bool pending)
    {
        var truth = recorded;
        foreach (var possible in Windows.Possible(animal, day, strict, reading, new OwnEdges(Days, animal, KindId)))
        {
            truth = Over(animal, Windows.For(KindId, possible), ref pending, null) == recorded ? truth : Truth.Unknown;
        }

        return truth;
    }

    /// <summary>The truth over the results of a window whose days are certain.</summary>
    private Truth Over(int animal, Bounds bounds, ref bool pending, Notes? notes)
    {
        var last = Runs.LastAtMost(Run, animal, bounds.High);
        var first = Math.Max(Run.Starts[animal], Runs.LastAtMost(Run, animal, bounds.Low - 1) + 1);
        var isEnough = first <= last && First(ref first, last);
        for (var place = last; place >= first; place--)
        {
            Days.Steps?.Take();
            notes?.Entry(KindId, place);
        }

        // Of the last ones, an earlier row that nobody can read takes nobody's place.
        var from = condition.Results > 0 && isEnough ? Run.Days[first] : bounds.Low;
        var isUnreadable = IsUnreadable(animal, from, bounds.High, notes);
        pending |= isUnreadable | IsAwaited(first, last);
        if (!isEnough)
        {
            notes?.Nothing();
            if (!isUnreadable)
            {
                notes?.NoResult(KindId, first > last ? bounds.Low : Run.Days[last] + 1, bounds.High);
            }

            pending |= Groups is not null && Groups.Last(animal, from, bounds.High) >= 0;
            return Truth.Unknown;
        }

        var truth = WithRowsOfOthers(animal, from, bounds.High, Unless(isUnreadable, Together(first, last)), ref pending);
        WriteFound(animal, first, last, notes);
        if (truth == Truth.Unknown)
        {
            NoteVague(first, last, bounds.High, isUnreadable, notes);
        }
        else if (truth == Truth.False)
        {
            notes?.Remedy(new Remedy(RemedyKind.NewResult, [condition.Of.Name]));
        }

        return truth;
    }

    /// <summary>Moves to the first result of the days that are asked for; false where there are fewer days.</summary>
    private bool First(ref int first, int last)
    {
        if (condition.Results == 0)
        {
            return true;
        }

        var (days, place) = (1, last);
        while (place > first && (Run.Days[place - 1] == Run.Days[place] || days < condition.Results))
        {
            days += Run.Days[place - 1] == Run.Days[place] ? 0 : 1;
            place--;
        }

        first = days < condition.Results ? first : place;
        return days == condition.Results;
    }

    private Truth Together(int first, int last)
    {
        if (condition.How != Aggregate.Every)
        {
            return Value(first, last) is var (low, high) ? _limits.Accept(low, high) : Truth.Unknown;
        }

        var all = Truth.True;
        var pending = false;
        for (var place = first; place <= last; place++)
        {
            var truth = TruthOf(0, place, ref pending, null);
            all = truth == Truth.False || all == Truth.False ? Truth.False : truth == Truth.Unknown ? Truth.Unknown : all;
        }

        return all;
    }

    /// <summary>What the days come to, each day's results being any of them.</summary>
    private (double Low, double High) Value(int first, int last)
    {
        var (low, high, days) = (0.0, 0.0, 0);
        for (var place = first; place <= last;)
        {
            var (dayLow, dayHigh, day) = (Run.Low[place], Run.High[place], Run.Days[place]);
            for (place++; place <= last && Run.Days[place] == day; place++)
            {
                (dayLow, dayHigh) = (Math.Min(dayLow, Run.Low[place]), Math.Max(dayHigh, Run.High[place]));
            }

            (low, high) = (days++, condition.How) switch
            {
                (0, _) => (dayLow, dayHigh),
                (_, Aggregate.Average) => (low + dayLow, high + dayHigh),
                (_, Aggregate.Lowest) => (Math.Min(low, dayLow), Math.Min(high, dayHigh)),
                _ => (Math.Max(low, dayLow), Math.Max(high, dayHigh)),
            };
        }

        return condition.How == Aggregate.Average ? (Limits.Round(low / days), Limits.Round(high / days)) : (low, high);
    }

    /// <summary>A row that cannot be read may be one more of all, which cannot make them good; among the last ones it would take another's place.</summary>
    private Truth Unless(bool isDoubted, Truth truth) => !isDoubted || (truth == Truth.False && condition.Results == 0) ? truth : Truth.Unknown;

    /// <summary>Results of a mob or the herd may be hers, or not.</summary>
    private Truth WithRowsOfOthers(int animal, int from, int to, Truth truth, ref bool pending)
    {
        for (var place = Groups?.Last(animal, from, to) ?? -1; place >= 0; place = Groups!.Last(animal, from, to, place))
        {
            if (condition.Results > 0 || !IsAccepted(Groups!.AnswerOf(place)))
            {
                pending = true;
                truth = Unless(true, truth);
            }
        }

        return truth;
    }

    private bool IsAccepted(byte answer) => answer != KindRun.NotKnown && condition.Answers.Contains(answer) != condition.IsNot;

    private bool IsNotKnown(int place) => _test is null ? Run.Answers[place] == KindRun.NotKnown : double.IsInfinity(Run.Low[place]) && double.IsInfinity(Run.High[place]);

    private bool IsAwaited(int first, int last)
    {
        var isAwaited = false;
        for (var place = first; place <= last; place++)
        {
            isAwaited |= IsNotKnown(place);
        }

        return isAwaited;
    }

    private void NoteVague(int first, int last, int high, bool isUnreadable, Notes? notes)
    {
        var isPlain = true;
        for (var place = first; place <= last; place++)
        {
            if (_test is null ? IsNotKnown(place) : Run.Low[place] != Run.High[place])
            {
                isPlain = false;
                notes?.Pending(KindId, place);
            }
        }

        if (isPlain && !isUnreadable && IsLimitKnown)
        {
            notes?.NoResult(KindId, Run.Days[last] + 1, high);
        }
    }

    protected override Truth TruthOf(int animal, int place, ref bool pending, Notes? notes) =>
        _test is not null ? _limits.Accept(Run.Low[place], Run.High[place])
        : Run.Answers[place] == KindRun.NotKnown ? Truth.Unknown
        : IsAccepted(Run.Answers[place]) ? Truth.True : Truth.False;

    protected override void WriteFound(int animal, int first, int last, Notes? notes)
    {
        if (notes is null)
        {
            return;
        }

        if (_test is null)
        {
            notes.Answers([.. Enumerable.Range(first, last - first + 1).Select(place => IsNotKnown(place) ? null : ((TestKind)condition.Of).Answers[Run.Answers[place]])], Run.Days[last]);
            return;
        }

        var (low, high) = condition.How == Aggregate.Every
            ? (Run.Low.AsSpan(first, last - first + 1).ToArray().Min(), Run.High.AsSpan(first, last - first + 1).ToArray().Max())
            : Value(first, last);
        notes.Number(low, high, _unit, Run.Days[last], last - first + 1, _limits);
    }
}
