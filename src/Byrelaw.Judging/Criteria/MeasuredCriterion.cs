namespace Byrelaw.Judging.Criteria;

/// <summary><c>latest body condition in the last 45 days between 4.0 and 5.5</c>, and the same with
/// <c>lowest</c>, <c>highest</c>, <c>average</c> and <c>change in</c>.</summary>
internal sealed class MeasuredCriterion(HerdDays days, MeasuredCondition condition, WindowSet windows)
    : LookupCriterion(days, condition, condition.Measure, windows)
{
    private readonly NumberLimits _test = new(days, condition.Test);
    private readonly string? _unit = condition.Measure.Unit?.Symbol;
    private readonly BackwardTotals _totals = new(days.Herd.Runs[condition.Measure.Id], condition.Aggregate);
    private Limits _limits = Limits.Of(condition.Test.Comparison, condition.Test.Low.Value, condition.Test.High.Value);

    protected override bool IsLimitKnown => _limits.IsKnown;

    protected override bool IsQuick => condition.Aggregate == Aggregate.Latest && _test.IsFixed;

    protected override Kleene Look(int animal, int day, in WindowSet.Reading reading, Bounds bounds, ref int until, Notes? notes)
    {
        _limits = _test.For(animal, notes);
        if (condition.Aggregate == Aggregate.Latest)
        {
            return Latest(animal, bounds, notes);
        }

        var pending = false;
        var recorded = Over(animal, bounds.From(bounds.Low), ref pending, notes);
        if (bounds.IsStrictlyCertain || recorded == Truth.Unknown)
        {
            return Kleene.Of(recorded, pending);
        }

        until = day;
        var assumed = bounds.IsCertain ? recorded : ForEveryAnchor(animal, day, strict: false, reading, recorded, ref pending);
        var strict = ForEveryAnchor(animal, day, strict: true, reading, recorded, ref pending);

        // All other windows lie within this one, but what changed may then have begun with another sample.
        pending |= condition.Aggregate != Aggregate.Change && IsAwaited(animal, bounds);
        return Kleene.Of(assumed, strict, pending);
    }

    /// <summary>The answer stands only if it is the same for every day on which the anchor may have been.</summary>
    private Truth ForEveryAnchor(int animal, int day, bool strict, in WindowSet.Reading reading, Truth recorded, ref bool pending)
    {
        var truth = recorded;
        foreach (var possible in Windows.Possible(animal, day, strict, reading, new OwnEdges(Days, animal, KindId)))
        {
            var bounds = Windows.For(KindId, possible);
            truth = Over(animal, bounds, ref pending, null) == recorded ? truth : Truth.Unknown;
            pending |= condition.Aggregate == Aggregate.Change && IsAwaited(animal, bounds);
        }

        return truth;
    }

    /// <summary>Whether a sample in a window that is looked at has no known result, whatever it may be.</summary>
    private bool IsAwaited(int animal, Bounds bounds)
    {
        var last = Runs.LastAtMost(Run, animal, bounds.High);
        var first = Math.Max(Run.Starts[animal], Runs.LastAtMost(Run, animal, bounds.Low - 1) + 1);
        for (var i = first; i <= last; i++)
        {
            if (IsNotKnown(i) && IsLookedAt(i, first, last))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Of a change, only what is between the earliest and the latest day is not.</summary>
    private bool IsLookedAt(int place, int first, int last) =>
        condition.Aggregate != Aggregate.Change || Run.Days[place] == Run.Days[first] || Run.Days[place] == Run.Days[last];

    protected override Truth TruthOf(int animal, int place, ref bool pending, Notes? notes)
    {
        var truth = _limits.Accept(Run.Low[place], Run.High[place]);
        if (truth == Truth.Unknown)
        {
            pending |= IsNotKnown(place);
            if (Run.Low[place] != Run.High[place])
            {
                notes?.Pending(KindId, place);
            }
        }

        return truth;
    }

    protected override void WriteFound(int animal, int first, int last, Notes? notes)
    {
        if (notes is not null)
        {
            var low = Run.Low[first];
            var high = Run.High[first];
            for (var i = first + 1; i <= last; i++)
            {
                low = Math.Min(low, Run.Low[i]);
                high = Math.Max(high, Run.High[i]);
            }

            notes.Number(low, high, _unit, Run.Days[last], last - first + 1, _limits);
        }
    }

    /// <summary>Whether a result allows any value at all, rather than some (as "below 3" does).</summary>
    private bool IsNotKnown(int place) => double.IsInfinity(Run.Low[place]) && double.IsInfinity(Run.High[place]);

    /// <summary>The truth over all results in a window whose days are certain.</summary>
    private Truth Over(int animal, Bounds bounds, ref bool pending, Notes? notes)
    {
        var start = Run.Starts[animal];
        var last = Runs.LastAtMost(Run, animal, bounds.High);
        var first = Math.Max(start, Runs.LastAtMost(Run, animal, bounds.Low - 1) + 1);
        for (var place = last; notes is not null && place >= first; place--)
        {
            notes.Entry(KindId, place);
        }

        Days.Steps?.Take();
        var isUnreadable = condition.Aggregate == Aggregate.Change && first <= last
            ? MayBeFirstOrLast(animal, bounds, Run.Days[first], Run.Days[last], notes)
            : IsUnreadable(animal, bounds.Low, bounds.High, notes);
        pending |= isUnreadable;
        if (isUnreadable && first > last)
        {
            notes?.Nothing();
            return Truth.Unknown;
        }

        if (first > last || (condition.Aggregate == Aggregate.Change && Run.Days[first] == Run.Days[last]))
        {
            for (var i = first; i <= last; i++)
            {
                pending |= IsNotKnown(i);
            }

            notes?.Nothing();
            notes?.NoResult(KindId, bounds.Low, bounds.High);
            return Truth.Unknown;
        }

        var (low, high) = Range(first, last);
        if (isUnreadable)
        {
            // A sample that may hold any value at all.
            low = condition.Aggregate == Aggregate.Highest ? low : double.NegativeInfinity;
            high = condition.Aggregate == Aggregate.Lowest ? high : double.PositiveInfinity;
        }

        var truth = _limits.Accept(low, high);
        notes?.Number(low, high, _unit, Run.Days[last], last - first + 1, _limits);
        if (truth == Truth.Unknown)
        {
            pending |= NoteVague(first, last, bounds.High, isUnreadable, notes);
        }
        else if (truth == Truth.False)
        {
            notes?.Remedy(new Remedy(RemedyKind.NewResult, [condition.Measure.Name]));
        }

        return truth;
    }

    /// <summary>Notes the results that leave the answer open, or that a newer one is wanted where each for itself is plain; whether one is
    /// not known at all.</summary>
    private bool NoteVague(int first, int last, int high, bool isUnreadable, Notes? notes)
    {
        var isPending = false;
        var isPlain = true;
        for (var i = first; i <= last; i++)
        {
            if (IsLookedAt(i, first, last) && Run.Low[i] != Run.High[i])
            {
                isPlain = false;
                isPending |= IsNotKnown(i);
                notes?.Pending(KindId, i);
            }
        }

        if (isPlain && !isUnreadable && IsLimitKnown)
        {
            notes?.NoResult(KindId, Run.Days[last] + 1, high);
        }

        return isPending;
    }

    /// <summary>Whether a row that could not be read may be the earliest sample or the latest; one between them changes no change.</summary>
    private bool MayBeFirstOrLast(int animal, Bounds bounds, int first, int last, Notes? notes)
    {
        var mayBeFirst = IsUnreadable(animal, bounds.Low, first, notes);
        return IsUnreadable(animal, last, bounds.High, notes) || mayBeFirst;
    }

    /// <summary>The lowest and highest value that the aggregate may have, for all values that the results allow.</summary>
    private (double Low, double High) Range(int first, int last)
    {
        switch (condition.Aggregate)
        {
            case Aggregate.Change:
                var (earliestLow, earliestHigh) = OfDay(first, +1);
                var (latestLow, latestHigh) = OfDay(last, -1);
                return (Limits.Round(latestLow - earliestHigh), Limits.Round(latestHigh - earliestLow));
            default:
                var totals = _totals.Between(first, last, out var steps);
                Days.Steps?.Take(steps);
                return totals;
        }
    }

    /// <summary>The range over one day's results, from the first or the last of all onwards; there are some of another day.</summary>
    private (double Low, double High) OfDay(int place, int step)
    {
        double low = Run.Low[place], high = Run.High[place];
        for (var i = place + step; Run.Days[i] == Run.Days[place]; i += step)
        {
            low = Math.Min(low, Run.Low[i]);
            high = Math.Max(high, Run.High[i]);
        }

        return (low, high);
    }
}
