namespace Byrelaw.Judging.Criteria;

/// <summary><c>at least 56 days since last calving</c>.</summary>
internal sealed partial class TimeSinceCriterion(HerdDays days, TimeSinceCondition condition, Anchor anchor)
    : LeafCriterion(days, condition, restsOnCoverage: true)
{
    private readonly TimeLimits _limits = new(condition.Test);

    private System.Collections.Immutable.ImmutableArray<string> Names => [.. condition.Kinds.Select(kind => kind.Name)];

    protected override Kleene Decide(int animal, int day, ref int until, Notes? notes)
    {
        var reading = anchor.Read(animal, day, ref until, notes);
        if (reading.State == AnchorState.NotKnown)
        {
            notes?.Nothing();
            return Kleene.Unknown;
        }

        if (reading.State == AnchorState.Never)
        {
            return Never(reading, notes);
        }

        var (low, high) = _limits.Accepted(day);
        until = Math.Min(until, _limits.NextTurn(reading.Last, day) - 1);
        notes?.Since(reading.Last, day, condition.Test);
        var recorded = reading.Last >= low && reading.Last <= high ? Truth.True : Truth.False;
        if (notes is not null && recorded == Truth.False)
        {
            notes.Remedy(RemedyOf(reading.Last, day, high));
        }

        if (reading.StrictLatest == reading.Last)
        {
            return Kleene.Of(recorded);
        }

        until = Math.Min(until, DoubtStands(animal, day, reading) - 1);
        var assumed = reading.Latest == reading.Last ? recorded : WithDoubt(animal, day, strict: false, reading, low, high, recorded);
        var strict = assumed == Truth.Unknown ? assumed : WithDoubt(animal, day, strict: true, reading, low, high, recorded);
        return Kleene.Of(assumed, strict);
    }

    private Kleene Never(AnchorReading reading, Notes? notes)
    {
        notes?.Never();
        var isMet = condition.Test.Comparison is Comparison.AtLeast or Comparison.MoreThan;
        if (!isMet)
        {
            notes?.Remedy(new Remedy(RemedyKind.NewEvent, Names));
        }

        var truth = isMet ? Truth.True : Truth.False;
        return Kleene.Of(truth, reading.StrictState == AnchorState.NotKnown ? Truth.Unknown : truth);
    }

    /// <summary>It may have happened again, unrecorded, on some later day: the answer stands only if it is the same for each.</summary>
    private Truth WithDoubt(int animal, int day, bool strict, AnchorReading reading, int low, int high, Truth recorded)
    {
        var latest = strict ? reading.StrictLatest : reading.Latest;
        if (recorded == Truth.True)
        {
            // All accepted days lie in one stretch, so the latest decides for all.
            return latest <= high ? Truth.True : Truth.Unknown;
        }

        return anchor.MayHaveHappened(animal, Math.Max(low, reading.Last + 1), Math.Min(high, day), strict) ? Truth.Unknown : Truth.False;
    }

    /// <summary>
    /// The first later day on which doubt may turn the answer. One uncovered stretch up to the day of
    /// judging moves only with its own first day; anything else is asked daily.
    /// </summary>
    private int DoubtStands(int animal, int day, AnchorReading reading)
    {
        var first = int.MaxValue;
        var firstStrict = int.MaxValue;
        foreach (var kind in anchor.Kinds)
        {
            first = Math.Min(first, Days.FirstUncovered(animal, kind, reading.Last + 1, day, strict: false));
            firstStrict = Math.Min(firstStrict, Days.FirstUncovered(animal, kind, reading.Last + 1, day, strict: true));
        }

        if (_limits.MayAcceptNone || (reading.Latest != reading.Last && !IsOneStretch(animal, first, day, reading)))
        {
            return day + 1;
        }

        return Math.Min(Turn(first, day), Turn(firstStrict, day));
    }

    private int Turn(int doubtful, int day) => doubtful > day ? int.MaxValue : _limits.NextTurn(doubtful, day);

    /// <summary>Whether one kind is uncovered on every day from the first doubtful one to the day of judging.</summary>
    private bool IsOneStretch(int animal, int first, int day, AnchorReading reading)
    {
        if (reading.Latest != day)
        {
            return false;
        }

        foreach (var kind in anchor.Kinds)
        {
            if (!Days.Covers(animal, kind, first, first) && Days.NextCoverageEdge(animal, kind, first) > day)
            {
                return true;
            }
        }

        return false;
    }

    private Remedy RemedyOf(int last, int day, int high)
    {
        if (last <= high)
        {
            // Too long ago: only a new one helps.
            return new Remedy(RemedyKind.NewEvent, Names);
        }

        var turns = _limits.FirstAccepting(last);
        return new Remedy(
            RemedyKind.Time, Names, turns > day && turns < Day.End ? Day.Date(turns) : null, high > Day.Start ? Day.Date(high) : null);
    }
}
