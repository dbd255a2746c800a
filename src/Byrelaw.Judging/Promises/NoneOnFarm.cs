namespace Byrelaw.Judging.Promises;

/// <summary>"There is none on this farm", held against what is on record.</summary>
internal static class NoneOnFarm
{
    private const int GrownAtMonths = 6;

    // As `calving` tells cows from heifers by its name, this event tells of bulls.
    private const string BullIn = "bull in";

    /// <summary>The promises that an entry contradicts (for <c>bull in</c>, also a grown male in the herd); they count as not written.</summary>
    public static IEnumerable<Doubted> Contradicted(Rulebook rulebook, Herd herd, HashSet<int> fallen)
    {
        foreach (var promise in (rulebook.Records?.Complete ?? []).Where(promise => promise.IsNone))
        {
            var since = Day.Number(promise.Since);
            foreach (var kind in promise.Kinds)
            {
                if ((Entry(herd, kind, since) ?? Unreadable(herd, kind, since) ?? Male(herd, kind, since)) is { } found)
                {
                    fallen.Add(kind.Id);
                    yield return found;
                }
            }
        }
    }

    private static NoneButOne? Entry(Herd herd, Kind kind, int since)
    {
        var run = herd.Runs[kind.Id];
        for (var animal = 0; animal < herd.Count; animal++)
        {
            for (var place = run.Starts[animal]; place < run.Starts[animal + 1]; place++)
            {
                if (run.Days[place] >= since && herd.Membership.At(animal, run.Days[place]) != Presence.Out)
                {
                    return new NoneButOne(kind, animal, run.Days[place], run.Lines[place]);
                }
            }
        }

        return null;
    }

    /// <summary>What cannot be read counts against the promise: a row of the kind that may be of one of the days.</summary>
    private static NoneButOne? Unreadable(Herd herd, Kind kind, int since)
    {
        foreach (var gap in herd.Coverage.Gaps)
        {
            if ((gap.Kind == kind.Id || gap.Like == kind.Id) && gap is { Line: > 0, IsHint: false, IsOfSheet: false, IsOfDouble: false, IsOfDetails: false, IsLostStart: false } && gap.To >= since)
            {
                return new NoneButOne(kind, gap.Animal, gap.From, gap.Line) { IsUnreadable = true };
            }
        }

        return null;
    }

    /// <summary>A male that was old enough to serve and in the herd on one of the days. Six months: common practice, no source.</summary>
    private static NoneButOne? Male(Herd herd, Kind kind, int since)
    {
        if (NameFolding.Fold(kind.Name) != BullIn)
        {
            return null;
        }

        var grownFrom = new TimeLength(GrownAtMonths, TimeUnit.Months);
        for (var animal = 0; animal < herd.Count; animal++)
        {
            if (herd.Sexes[animal] != Sex.Male)
            {
                continue;
            }

            var born = herd.BornEarliest[animal];
            var from = Math.Max(since, born <= Day.Start ? since : grownFrom.After(born));
            if (from <= herd.Coverage.KnownDay && IsHere(herd, animal, from))
            {
                return new NoneButOne(kind, animal, Day.Start, 0);
            }
        }

        return null;
    }

    private static bool IsHere(Herd herd, int animal, int from)
    {
        var members = herd.Membership;
        for (var place = members.StretchAt(animal, from); place < members.Starts[animal + 1]; place++)
        {
            if (members.States[place] != Presence.Out && members.From[place] <= herd.Coverage.KnownDay)
            {
                return true;
            }
        }

        return false;
    }
}
