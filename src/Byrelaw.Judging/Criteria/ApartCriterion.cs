namespace Byrelaw.Judging.Criteria;

/// <summary><c>at least 2 heats between 18 and 24 days apart since last calving</c>.</summary>
/// <remarks>A wider window holds every chain that a narrower one holds. So it is true where the narrowest that her anchor allows holds one of sure days, and false where
/// the widest holds none even of days that may have been.</remarks>
internal sealed class ApartCriterion(HerdDays days, ApartCondition condition, WindowSet windows) : LeafCriterion(days, condition, restsOnCoverage: true)
{
    private readonly ChainOfDays _chain = new(condition.Shortest, condition.Longest);
    private readonly string[] _names = [.. condition.Counted.Select(counted => counted.Kind.Name).Distinct(StringComparer.Ordinal)];

    private readonly EntryCounter[] _counters = EntryCounter.Of(days, condition.Counted);

    protected override Kleene Decide(int animal, int day, ref int until, Notes? notes)
    {
        var reading = windows.Read(animal, day, ref until, notes);
        if (!reading.IsKnown)
        {
            notes?.Nothing();
            return Kleene.Unknown;
        }

        var (sure, strictlySure, perhaps, strictlyPerhaps) = (new SortedSet<int>(), new SortedSet<int>(), new SortedSet<int>(), new SortedSet<int>());
        var (open, strictlyOpen) = (new List<(int From, int To)>(), new List<(int From, int To)>());
        var (tally, isCovered) = (new EntryTally { IsCovered = true }, true);
        foreach (var counter in _counters)
        {
            var bounds = windows.For(counter.Kind, reading);
            counter.Count(animal, bounds, ref tally, notes);
            counter.Days(animal, bounds.Latest, bounds.High, sure, null);
            counter.Days(animal, bounds.StrictLatest, bounds.High, strictlySure, null);
            counter.Days(animal, bounds.Low, bounds.High, perhaps, perhaps);
            counter.Days(animal, bounds.StrictLow, bounds.High, strictlyPerhaps, strictlyPerhaps);
            AddUncovered(animal, counter.Kind, bounds.Low, bounds.High, open);
            AddUncovered(animal, counter.Kind, bounds.StrictLow, bounds.High, strictlyOpen);
            if (bounds.High >= bounds.StrictLow && Days.IsOpen(animal, counter.Kind, bounds.High))
            {
                strictlyOpen.Add((FirstOpen(animal, counter.Kind, Math.Max(bounds.StrictLow, Days.KnownDay + 1)), bounds.High));
            }

            tally.BeginsEarlier |= bounds.StrictlyEarlier > 0;
            if (!Days.Covers(animal, counter.Kind, bounds.Low, bounds.High))
            {
                isCovered = false;
                tally.IsPending |= counter.IsOfAnswers && Days.Coverage.AnyGap(animal, counter.Kind, bounds.Low, bounds.High);
                notes?.NotKept(counter.Kind, bounds.Low, bounds.High);
            }

            windows.Limit(animal, day, counter.Kind, reading, ref until);
            if (counter.Groups is { } group)
            {
                windows.LimitBy(group.Edges, day, reading, ref until);
            }

            until = bounds.IsStrictlyCertain && isCovered && bounds.High <= Days.KnownDay ? until : day;
        }

        var least = _chain.Longest([.. sure]);
        var assumed = Together(least, perhaps, open);
        var strict = day <= Days.KnownDay || assumed == Truth.Unknown ? assumed
            : !reading.IsStrictlyKnown ? Truth.Unknown
            : Together(_chain.Longest([.. strictlySure]), strictlyPerhaps, strictlyOpen);
        notes?.Chain(least, isCovered ? _chain.Longest([.. perhaps]) : null);
        if (assumed == Truth.False)
        {
            notes?.Remedy(new Remedy(_counters[0].IsOfAnswers ? RemedyKind.NewResult : RemedyKind.NewEvent, [.. _names]));
        }

        return Kleene.Of(assumed, strict, (tally.IsPending || tally.BeginsEarlier) && assumed == Truth.Unknown);
    }

    private Truth Together(int least, SortedSet<int> perhaps, List<(int From, int To)> open) =>
        least >= condition.Days ? Truth.True
        : _chain.Fits(condition.Days, [.. perhaps.Select(day => (day, day)), .. open]) ? Truth.Unknown
        : Truth.False;

    /// <summary>The first day that the future leaves open: nothing happens before the age from which it can.</summary>
    private int FirstOpen(int animal, int kind, int day)
    {
        while (!Days.IsOpen(animal, kind, day))
        {
            day++;
        }

        return day;
    }

    /// <summary>Adds the stretches of days on which it may have happened unrecorded.</summary>
    private void AddUncovered(int animal, int kind, int low, int high, List<(int From, int To)> open)
    {
        for (var day = low; day <= high;)
        {
            var next = Days.NextCoverageEdge(animal, kind, day);
            if (!Days.Covers(animal, kind, day, day))
            {
                open.Add((day, Math.Min(high, next - 1)));
            }

            day = next;
        }
    }
}
