namespace Byrelaw.Judging.Tests.Reference;

/// <summary>The days that a condition looks at.</summary>
/// <param name="From">The first.</param>
/// <param name="To">The last.</param>
/// <param name="NotOf">Kinds that count only after a day, with whatever filter: "other calvings of that day do not".</param>
public sealed record Stretch(int From, int To, IReadOnlyList<(int Day, IReadOnlyList<Kind> Kinds)> NotOf)
{
    /// <summary>The first day on which this kind counts.</summary>
    public int FromFor(Kind kind) => NotOf.Any(not => not.Day >= From && not.Kinds.Any(one => one.Declaration.Id == kind.Declaration.Id)) ? From + 1 : From;

    /// <summary>Two stretches with one key are the same.</summary>
    public (int From, int To, long NotOf) Key => (From, To, NotOf.SelectMany(not => not.Kinds).Aggregate(0L, (set, kind) => set | (1L << kind.Declaration.Id)));

    public bool Holds(Kind kind, int day) => day >= FromFor(kind) && day <= To;
}

/// <summary>"Windows, with d the day of judging and e the event's day. A count has one or two windows (both must hold)."</summary>
public sealed class WindowReference(FarmAsRead farm, CoverageReference coverage, AnchorReference anchors, SpellReference spells)
{
    private readonly Dictionary<Window, Stretch[]> _fixed = new(ReferenceEqualityComparer.Instance);

    /// <summary>
    /// Every stretch that the windows may be, one for each day on which the events that they count from may have been;
    /// null where that is not known at all.
    /// </summary>
    public IEnumerable<Stretch>? Possible(IReadOnlyList<Window> windows, int animal, int day, bool strict)
    {
        IEnumerable<Stretch> possible = [new Stretch(coverage.Dawn, day, [])];
        foreach (var window in windows)
        {
            if (One(window, animal, day, strict) is not { } one)
            {
                return null;
            }

            possible = Both(possible, one);
        }

        return possible.DistinctBy(both => both.Key);
    }

    /// <summary>All pairs. The later of two first days is the first of both, so only a few of all the pairs differ.</summary>
    private static IEnumerable<Stretch> Both(IEnumerable<Stretch> first, IEnumerable<Stretch> second)
    {
        if (!first.Skip(1).Any() || !second.Skip(1).Any() || first.Concat(second).DistinctBy(stretch => stretch.To).Skip(1).Any())
        {
            return first.SelectMany(a => second.Select(b => Both(a, b)));
        }

        var (all, others) = (first.ToList(), second.ToList());
        var earliest = all.MinBy(a => a.From)!;
        var earliestOther = others.MinBy(b => b.From)!;
        var sameDay = others.ToLookup(b => b.From);
        return all.Where(a => a.From >= earliestOther.From).Select(a => Both(a, earliestOther))
            .Concat(all.SelectMany(a => sameDay[a.From].Select(b => Both(a, b))))
            .Concat(others.Where(b => b.From >= earliest.From).Select(b => Both(earliest, b)));
    }

    private static Stretch Both(Stretch a, Stretch b)
    {
        if (b.From >= a.From && b.To <= a.To && a.NotOf.Count == 0)
        {
            return b;
        }

        var from = Math.Max(a.From, b.From);
        return new Stretch(from, Math.Min(a.To, b.To), [.. a.NotOf.Concat(b.NotOf).Where(not => not.Day >= from)]);
    }

    private IEnumerable<Stretch>? One(Window window, int animal, int day, bool strict)
    {
        switch (window)
        {
            case SinceLast since:
                // "e on or after her latest calving not later than d: events of other kinds on that day count (retained
                // membranes), other calvings of that day do not"; never happened: "count from birth".
                return FromAnchor(since.Kinds, last => new Stretch(last, day, [(last, since.Kinds)]));
            case FromAfterLast from:
                // "e >= last calving + 21 days"
                return FromAnchor(from.Kinds, last => new Stretch(Sums.After(from.Wait, last), day, []));
            case FromAfterSpell after:
                // "`last` of a spell is the end of her last one. While it runs the window is empty."
                return spells.Last(after.Spell, new Moment(animal, day, strict))
                    .Select(last => last is { } on ? new Stretch(Sums.After(after.Wait, on), day, []) : new Stretch(Birth(animal), day, []));
            case BeforeDay { Day.Date: null } before:
                // "Windows e < DAY and 0 <= e - DAY <= 21, always with e <= d", for each day on which X may have been last; never: from birth.
                return EachDay(before.Day.Last, last => new Stretch(coverage.Dawn, Math.Min(day, last - 1), []));
            case DaysAfter { Day.Date: null } after:
                return EachDay(after.Day.Last, last => new Stretch(last, Math.Min(day, Sums.After(after.Length, last)), []));
            case SinceBirth:
                return [new Stretch(Birth(animal), day, [])];
            default:
                if (!_fixed.TryGetValue(window, out var days))
                {
                    days = Fixed(window);
                    _fixed[window] = days;
                }

                return [days[day - coverage.Dawn]];
        }

        IEnumerable<Stretch>? EachDay(IReadOnlyList<Kind> kinds, Func<int, Stretch> stretch)
        {
            var last = anchors.Last(kinds, animal, day, strict);
            return last.IsNotKnown ? null : last.Never ? [stretch(Birth(animal))] : last.Days.Select(stretch);
        }

        IEnumerable<Stretch>? FromAnchor(IReadOnlyList<Kind> kinds, Func<int, Stretch> stretch)
        {
            var last = anchors.Last(kinds, animal, day, strict);
            return last.IsNotKnown ? null
                : last.Never ? [new Stretch(Birth(animal), day, [])]
                : last.Days.Select(stretch);
        }
    }

    private int Birth(int animal) => farm.Animals[animal].BornFirst ?? coverage.Dawn;

    /// <summary>
    /// A window that is the same for every animal, for each day d. It only ever moves forward with d, so its two ends are
    /// looked for from where they were the day before.
    /// </summary>
    private Stretch[] Fixed(Window window)
    {
        var stretches = new Stretch[coverage.Dusk - coverage.Dawn + 1];
        var from = coverage.Dawn;

        // Dawn stands for all the days before it: one that has no day but those has dawn.
        var to = coverage.Dawn;
        for (var d = coverage.Dawn; d <= coverage.Dusk; d++)
        {
            while (from <= d && IsTooEarly(window, from, d))
            {
                from++;
            }

            while (to + 1 <= d && !IsTooLate(window, to + 1, d))
            {
                to++;
            }

            stretches[d - coverage.Dawn] = new Stretch(from, to, []);
        }

        return stretches;
    }

    private static bool IsTooEarly(Window window, int e, int d) => window switch
    {
        // "0 <= d - e <= N", in months and years by the sum of the earlier date.
        InTheLast inTheLast => Sums.After(inTheLast.Length, e) < d,
        BetweenAgo ago => Sums.After(ago.Far, e) < d,
        // "0 <= collection - e <= 60, and e <= d"
        BeforeDate before => Sums.After(before.Length, e) < DateOf(before.Date),
        SinceDate since => e < DateOf(since.Date),
        DaysAfter { Day.Date: { } date } => e < DateOf(date),
        AtLeastAgo or Ever or BeforeDay => false,
        _ => throw new ArgumentOutOfRangeException(nameof(window)),
    };

    private static bool IsTooLate(Window window, int e, int d) => window switch
    {
        // "d - e likewise (30 days ago is in `in the last 30 days` and in `at least 30 days ago`)"
        AtLeastAgo ago => Sums.After(ago.Near, e) > d,
        BetweenAgo ago => Sums.After(ago.Near, e) > d,
        BeforeDate before => e > DateOf(before.Date),
        BeforeDay { Day.Date: { } date } => e >= DateOf(date),
        DaysAfter { Day.Date: { } date } after => e > Sums.After(after.Length, DateOf(date)),
        _ => false,
    };

    private static int DateOf(DateReference date) => DayNumber.Of(date.Value ?? throw new InvalidOperationException("A date without a value."));
}
