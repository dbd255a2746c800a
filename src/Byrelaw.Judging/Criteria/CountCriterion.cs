namespace Byrelaw.Judging.Criteria;

/// <summary><c>no mastitis or metritis in the last 30 days</c>.</summary>
internal sealed partial class CountCriterion(HerdDays days, CountCondition condition, WindowSet windows)
    : LeafCriterion(days, condition, restsOnCoverage: true)
{
    private readonly Limits _limits = Limits.Of(condition.Test);

    /// <summary>Each kind once, with the answers of it that count.</summary>
    private readonly EntryCounter[] _counters = EntryCounter.Of(days, condition.Counted);

    protected override Kleene Decide(int animal, int day, ref int until, Notes? notes)
    {
        var reading = windows.Read(animal, day, ref until, notes);
        if (!reading.IsKnown)
        {
            notes?.Nothing();
            return Kleene.Unknown;
        }

        var tally = new EntryTally { IsCovered = true, IsStrictlyCovered = reading.IsStrictlyKnown, IsCertain = true, IsStrictlyCertain = true };
        foreach (var counter in _counters)
        {
            var kind = counter.Kind;
            var bounds = windows.For(kind, reading);
            var first = counter.Count(animal, bounds, ref tally, notes);
            if (counter.Groups is { } group)
            {
                windows.LimitBy(group.Edges, day, reading, ref until);
            }

            if (windows.Only is { } only && bounds.Low <= day)
            {
                LimitByOnly(only, animal, day, kind, bounds, first, ref until);
            }
            else
            {
                windows.Limit(animal, day, kind, reading, ref until);
            }

            if (!Days.Covers(animal, kind, bounds.Low, bounds.High))
            {
                tally.IsCovered = false;
                // A row that cannot be read may be a sample, its result not known.
                tally.IsPending |= counter.IsOfAnswers && Days.Coverage.AnyGap(animal, kind, bounds.Low, bounds.High);
                notes?.NotKept(kind, bounds.Low, bounds.High);
            }

            tally.IsStrictlyCovered &= bounds.High < bounds.Low || !Days.IsOpen(animal, kind, bounds.High);
            tally.IsCertain &= bounds.IsCertain;
            tally.IsStrictlyCertain &= bounds.IsStrictlyCertain;
            tally.BeginsEarlier |= bounds.StrictlyEarlier > 0;
        }

        var assumed = tally.IsCertain || _limits.IsOneSided(0)
            ? _limits.Accept(tally.Least, tally.IsCovered ? tally.Most : double.PositiveInfinity)
            : ForEveryAnchor(animal, day, strict: false, reading, ref until);
        var strict = Strict(animal, day, assumed, tally, reading, ref until);
        if (notes is not null)
        {
            notes.Count(tally.Least, tally.IsCovered ? tally.Most : null, _limits);
            if (assumed == Truth.False)
            {
                notes.Remedy(RemedyOf(tally.Most));
            }
        }

        return Kleene.Of(assumed, strict, (tally.IsPending || tally.BeginsEarlier) && assumed == Truth.Unknown);
    }

    private Truth Strict(int animal, int day, Truth assumed, in EntryTally tally, in WindowSet.Reading reading, ref int until)
    {
        if (day <= Days.KnownDay || assumed == Truth.Unknown)
        {
            return assumed;
        }

        if (!reading.IsStrictlyKnown)
        {
            return Truth.Unknown;
        }

        return tally.IsStrictlyCertain || (!tally.BeginsEarlier && _limits.IsOneSided(0))
            ? _limits.Accept(tally.StrictLeast, tally.IsCovered && tally.IsStrictlyCovered ? tally.Most : double.PositiveInfinity)
            : ForEveryAnchor(animal, day, strict: true, reading, ref until);
    }

    /// <summary>For a single window that ends on the day of judging: until the next event, until the first in the
    /// window drops out of it, until coverage changes at either end.</summary>
    private void LimitByOnly(WindowReader only, int animal, int day, int kind, in Bounds bounds, int first, ref int until)
    {
        var run = Days.Herd.Runs[kind];
        var next = Runs.LastAtMost(run, animal, day) + 1;
        if (next < run.Starts[animal + 1])
        {
            until = Math.Min(until, run.Days[next] - 1);
        }

        until = Math.Min(until, Days.NextCoverageEdge(animal, kind, day) - 1);
        if (only.LowMoves is { } low)
        {
            var edge = Days.NextCoverageEdge(animal, kind, bounds.Low) - 1;
            var leaves = Math.Min(first, edge);
            if (leaves < int.MaxValue - 1)
            {
                until = Math.Min(until, low.After(leaves));
            }
        }
        else if (bounds.StrictLatest >= day)
        {
            // The anchor may be as late as the day of judging, and moves along with it past today's events.
            until = Math.Min(until, Days.NextEdge(animal, kind, day) - 1);
        }
    }

    /// <summary>An exact number neither only grows nor only shrinks with the window, so the days on which the
    /// anchor may have been are tried in turn, of those that nothing tells apart one. What there is to count is gone through once.</summary>
    private Truth ForEveryAnchor(int animal, int day, bool strict, in WindowSet.Reading reading, ref int until)
    {
        until = day;
        int[] kinds = [.. _counters.Select(counter => counter.Kind)];
        GroupSamples?[] groups = [.. _counters.Select(counter => counter.Groups)];
        var readings = windows.Possible(animal, day, strict, reading, new WithGroupDays<KindsEdges>(new KindsEdges(Days, animal, kinds), groups));
        var counts = new CountsByFirstDay[_counters.Length];
        for (var i = 0; i < counts.Length; i++)
        {
            counts[i] = new CountsByFirstDay(_counters[i], animal, windows.For(kinds[i], reading));
        }

        Truth? together = null;
        foreach (var possible in readings)
        {
            Days.Steps?.Take();
            var (least, most, isCovered) = (0, 0, true);
            for (var i = 0; i < counts.Length; i++)
            {
                var bounds = windows.For(kinds[i], possible);
                var (own, perhaps) = counts[i].From(bounds.Low);
                (least, most) = (least + own, most + perhaps);
                isCovered &= Days.Covers(animal, kinds[i], bounds.Low, bounds.High)
                    && !(strict && bounds.High >= bounds.Low && Days.IsOpen(animal, kinds[i], bounds.High));
            }

            var truth = _limits.Accept(least, isCovered ? most : double.PositiveInfinity);
            if (together is { } before && before != truth)
            {
                return Truth.Unknown;
            }

            together = truth;
        }

        return together ?? Truth.Unknown;
    }

    private Remedy RemedyOf(int most)
    {
        var names = condition.Counted.Select(counted => counted.Kind.Name).Distinct(StringComparer.Ordinal);
        if (most < _limits.Low)
        {
            return new Remedy(!_counters[0].IsOfAnswers ? RemedyKind.NewEvent : RemedyKind.NewResult, [.. names]);
        }

        // Too many: only a window that moves on, or a new anchor, can leave some of them behind.
        foreach (var window in condition.Windows)
        {
            switch (window)
            {
                case InTheLast or BetweenAgo:
                    return new Remedy(RemedyKind.Time, []);
                case SinceLast since:
                    return new Remedy(RemedyKind.NewEvent, [.. since.Kinds.Select(kind => kind.Name)]);
                case FromAfterSpell after:
                    return new Remedy(RemedyKind.NewEvent, [after.Spell.Until.Name]);
                case DaysAfter { Day.Date: null } after:
                    return new Remedy(RemedyKind.NewEvent, [.. after.Day.Last.Select(kind => kind.Name)]);
                case FromAfterLast after:
                    return new Remedy(RemedyKind.NewEvent, [.. after.Kinds.Select(kind => kind.Name)]);
            }
        }

        return new Remedy(RemedyKind.ForGood, [.. names]);
    }
}
