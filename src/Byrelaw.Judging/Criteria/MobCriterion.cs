namespace Byrelaw.Judging.Criteria;

/// <summary>
/// A condition over her mob. It uses results dated while she was in the mob that she is in on the day of
/// judging: mob rows, and the results of animals that were in it, each animal counted once.
/// </summary>
internal abstract class MobCriterion(
    HerdDays days, Condition condition, MeasureKind measure, WindowSet windows, int fromAtLeast, MobResults results)
    : LeafCriterion(days, condition, restsOnCoverage: true)
{
    protected override Kleene Decide(int animal, int day, ref int until, Notes? notes)
    {
        var mobs = Days.Herd.Mobs;
        var stay = mobs.StayAt(animal, day);
        if (NextStay(animal, stay) is var next && next < mobs.Starts[animal + 1])
        {
            until = Math.Min(until, mobs.From[next] - 1);
        }

        if (stay < 0 || mobs.Mob[stay] == MobStays.NotKnown)
        {
            notes?.MobNotKnown();
            return Kleene.Unknown;
        }

        var reading = windows.Read(animal, day, ref until, notes);
        if (!reading.IsKnown)
        {
            notes?.Nothing();
            return Kleene.Unknown;
        }

        var mob = mobs.Mob[stay];
        var since = SinceWhen(animal, stay);
        var edges = new MobEdges(results, mob, since);
        windows.LimitBy(edges, day, reading, ref until);
        var bounds = reading.Together;
        var pending = false;
        var recorded = Over(animal, mob, Math.Max(bounds.Low, since), bounds.High, ref pending, notes);
        if ((bounds.IsStrictlyCertain && reading.IsStrictlyKnown) || recorded == Truth.Unknown)
        {
            return Kleene.Of(recorded, pending);
        }

        until = bounds.IsStrictlyCertain ? until : day;
        var assumed = bounds.IsCertain ? recorded : ForEveryAnchor(strict: false, ref pending);
        var strict = reading.IsStrictlyKnown ? ForEveryAnchor(strict: true, ref pending) : Truth.Unknown;

        // A result that is awaited is of the widest days, and the others lie within them.
        pending |= (assumed == Truth.Unknown || reading.IsStrictlyKnown) && AnyNotKnown(results.Sampled(mob, Math.Max(bounds.Low, since), bounds.High));
        return Kleene.Of(assumed, strict, pending);

        Truth ForEveryAnchor(bool strict, ref bool pending)
        {
            foreach (var possible in windows.Possible(animal, day, strict, reading, edges))
            {
                var own = possible.Together;
                if (Over(animal, mob, Math.Max(own.Low, since), own.High, ref pending, null) != recorded)
                {
                    return Truth.Unknown;
                }
            }

            return recorded;
        }
    }

    /// <summary>Whether what results are held to is known; where it is not, no other result would tell either.</summary>
    protected abstract bool IsLimitKnown(int animal);

    /// <summary>Whether a result that counts leaves open what it comes to.</summary>
    protected abstract bool LeavesOpen(int animal, in MobResult result);

    /// <summary>Decides from the mob's values; there are enough of them.</summary>
    protected abstract Truth Decide(int animal, MobSample sample, Notes? notes);

    private Truth Over(int animal, int mob, int from, int to, ref bool pending, Notes? notes)
    {
        var sample = results.Sampled(mob, from, to);
        foreach (var result in sample.Results)
        {
            notes?.Row(measure.Id, result.Day, result.Line, ValueText.WriteResult(result.Low, result.High, measure.Unit?.Symbol) ?? Notes.Unsettled);
        }

        if (MayBeUnreadable(mob, from, to, notes))
        {
            pending = true;
            return Truth.Unknown;
        }

        if (sample.Sure.Length < fromAtLeast || sample.Sure.Length == 0)
        {
            var needed = Math.Max(fromAtLeast, 1) - sample.Sure.Length;
            notes?.Number(double.NegativeInfinity, double.PositiveInfinity, measure.Unit?.Symbol, null, sample.Sure.Length, Anything);
            notes?.TooFewOfTheMob(measure.Id, from, to, needed);
            pending |= AnyNotKnown(sample);
            return Truth.Unknown;
        }

        var truth = Decide(animal, sample, notes);
        if (truth == Truth.Unknown)
        {
            pending |= AnyNotKnown(sample);
            if (notes is not null && IsLimitKnown(animal))
            {
                WhatSettles(animal, mob, from, to, sample, notes);
            }
        }
        else if (truth == Truth.False)
        {
            notes?.Remedy(new Remedy(RemedyKind.NewResult, [measure.Name]));
        }

        return truth;
    }

    /// <summary>The results that are awaited or too vague: whoever else is sampled, these leave it open. Where there are none, a new one.</summary>
    private void WhatSettles(int animal, int mob, int from, int to, MobSample sample, Notes notes)
    {
        var any = false;
        foreach (var result in sample.Counted)
        {
            if (LeavesOpen(animal, result))
            {
                notes.Pending(measure.Id, result, mob);
                any = true;
            }
        }

        if (!any)
        {
            notes.NoResult(measure.Id, from, to);
        }
    }

    private static bool AnyNotKnown(MobSample sample) => Array.Exists(sample.Sure, IsNotKnown) || Array.Exists(sample.Perhaps, IsNotKnown);

    private static bool IsNotKnown(MobValue value) => double.IsInfinity(value.Low) && double.IsInfinity(value.High);

    private static readonly Limits Anything = new(double.NegativeInfinity, double.PositiveInfinity);

    private int NextStay(int animal, int stay) => stay < 0 ? Days.Herd.Mobs.Starts[animal] : stay + 1;

    /// <summary>The day since which she has been in the mob without a break.</summary>
    private int SinceWhen(int animal, int stay)
    {
        var mobs = Days.Herd.Mobs;
        while (stay > mobs.Starts[animal] && mobs.Mob[stay - 1] == mobs.Mob[stay])
        {
            stay--;
        }

        return mobs.From[stay];
    }

    /// <summary>Whether a row that could not be read may be a sample of this mob in these days.</summary>
    private bool MayBeUnreadable(int mob, int from, int to, Notes? notes)
    {
        if (to < from || !Days.Coverage.HasGaps[measure.Id])
        {
            return false;
        }

        // Her whole mob asks the same.
        if (notes is null && results.Unreadable.TryGetValue((mob, from, to), out var known))
        {
            return known;
        }

        var mobs = Days.Herd.Mobs;
        var any = false;
        foreach (var gap in Days.Coverage.Gaps)
        {
            if ((gap.Kind == measure.Id || gap.Kind < 0) && gap.From <= to && gap.To >= from
                && (gap.Animal < 0 || MayBeIn(mobs, gap.Animal, mob, Math.Max(gap.From, from), Math.Min(gap.To, to))))
            {
                any = true;
                notes?.Unreadable(gap, measure.Id);
            }
        }

        results.Unreadable[(mob, from, to)] = any;
        return any;
    }

    /// <summary>Whether an animal may have been in a mob on one of these days.</summary>
    private static bool MayBeIn(MobStays mobs, int animal, int mob, int from, int to)
    {
        for (var stay = mobs.StayAt(animal, from); ; stay++)
        {
            var here = stay < mobs.Starts[animal] ? MobStays.NotKnown : mobs.Mob[stay];
            if (here == mob || here == MobStays.NotKnown)
            {
                return true;
            }

            if (stay + 1 >= mobs.Starts[animal + 1] || mobs.From[stay + 1] > to)
            {
                return false;
            }
        }
    }

    /// <summary>Days on which what is looked at may change: results, the start of her stay, and, for rows that could not be
    /// read, the days they may be of and those on which their animal changes mobs.</summary>
    private readonly struct MobEdges(MobResults results, int mob, int since) : IEdges
    {
        public int Next(int day)
        {
            var edge = Math.Min(results.NextEdge(mob, day), results.NextGapEdge(day));
            return since > day ? Math.Min(edge, since) : edge;
        }
    }
}
