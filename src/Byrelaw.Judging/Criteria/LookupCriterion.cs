namespace Byrelaw.Judging.Criteria;

/// <summary>
/// What <c>latest</c> means, for measures and tests alike: the latest recorded in the window. A sample
/// whose result is not known is the latest all the same, and so may be a row that could not be read.
/// </summary>
internal abstract partial class LookupCriterion(HerdDays days, Condition condition, Kind kind, WindowSet windows)
    : LeafCriterion(days, condition, restsOnCoverage: true)
{
    protected int KindId { get; } = kind.Id;

    protected KindRun Run { get; } = days.Herd.Runs[kind.Id];

    /// <summary>Results of a mob or the herd that may be hers; null for none.</summary>
    protected GroupSamples? Groups { get; } = GroupSamples.Of(days, kind.Id);

    protected WindowSet Windows { get; } = windows;

    protected sealed override Kleene Decide(int animal, int day, ref int until, Notes? notes)
    {
        var reading = Windows.Read(animal, day, ref until, notes);
        if (!reading.IsKnown)
        {
            notes?.Nothing();
            return Kleene.Unknown;
        }

        Windows.Limit(animal, day, KindId, reading, ref until);
        if (Groups is not null)
        {
            Windows.LimitBy(Groups.Edges, day, reading, ref until);
        }

        var answer = Look(animal, day, reading, Windows.For(KindId, reading), ref until, notes);
        return reading.IsStrictlyKnown && reading.Together.StrictlyEarlier == 0 ? answer
            : Kleene.Of(answer.Assumed, reading.IsStrictlyKnown ? answer.Strict : Truth.Unknown, answer.IsPending || reading.Together.StrictlyEarlier > 0);
    }

    /// <summary>Decides once the windows are known.</summary>
    protected abstract Kleene Look(int animal, int day, in WindowSet.Reading reading, Bounds bounds, ref int until, Notes? notes);

    /// <summary>The truth of all results of the latest day in the window: one for all, or not known.</summary>
    protected Kleene Latest(int animal, Bounds bounds, Notes? notes)
    {
        var start = Run.Starts[animal];
        var last = Runs.LastAtMost(Run, animal, bounds.High);
        if (last < start || Run.Days[last] < bounds.Low)
        {
            notes?.Nothing();
            var isUnreadable = IsUnreadable(animal, bounds.Low, bounds.High, notes);
            if (!isUnreadable)
            {
                notes?.NoResult(KindId, bounds.Low, bounds.High);
            }

            return Kleene.Of(Truth.Unknown, isUnreadable || MayBeBad(animal, bounds.Low, bounds.High));
        }

        var pending = false;
        var latest = Run.Days[last];
        var truth = TruthOf(animal, last, ref pending, notes);
        notes?.Entry(KindId, last);
        var first = last;
        while (first > start && Run.Days[first - 1] == latest)
        {
            first--;
            notes?.Entry(KindId, first);
            if (TruthOf(animal, first, ref pending, notes) != truth)
            {
                truth = Truth.Unknown;
            }
        }

        WriteFound(animal, first, last, notes);
        if (IsUnreadable(animal, latest, bounds.High, notes))
        {
            pending = true;
            truth = Truth.Unknown;
        }

        var ofGroup = AmongGroups(animal, latest, bounds.High, ref truth, notes);

        // A result from before the latest day that her anchor may have been is none at all then.
        var assumed = latest >= bounds.Latest ? truth : Truth.Unknown;
        if (notes is not null)
        {
            // Where her limit is not known, no newer result would tell either.
            if (assumed == Truth.Unknown && !pending && (IsLimitKnown || latest < bounds.Latest))
            {
                notes.NoResult(KindId, Math.Max(Math.Max(latest, ofGroup) + 1, bounds.Latest), bounds.High);
            }

            notes.Remedy(new Remedy(RemedyKind.NewResult, [kind.Name]));
        }

        return Kleene.Of(assumed, latest >= bounds.StrictLatest ? truth : Truth.Unknown, pending || ofGroup > Day.Start);
    }

    /// <summary>Whether a result of her mob or the herd in these days may be hers and speaks against it, or does not say.</summary>
    protected virtual bool MayBeBad(int animal, int from, int to) => false;

    /// <summary>Holds her own truth against results of her mob or the herd that may be hers, and no earlier than her own: what they say otherwise makes
    /// it not known.</summary>
    /// <returns>The last day of one that does; before all days where none does.</returns>
    protected virtual int AmongGroups(int animal, int from, int to, ref Truth truth, Notes? notes) => Day.Start;

    /// <summary>Whether what results are held to is known.</summary>
    protected virtual bool IsLimitKnown => true;

    /// <summary>Whether a row that could not be read may be a sample dated in these days.</summary>
    protected bool IsUnreadable(int animal, int from, int to, Notes? notes)
    {
        if (to < from || !Days.Coverage.AnyGap(animal, KindId, from, to))
        {
            return false;
        }

        notes?.Unreadable(animal, KindId, from, to);
        return true;
    }

    /// <summary>The truth of one result.</summary>
    protected abstract Truth TruthOf(int animal, int place, ref bool pending, Notes? notes);

    /// <summary>Notes the results of the latest day.</summary>
    protected abstract void WriteFound(int animal, int first, int last, Notes? notes);
}
