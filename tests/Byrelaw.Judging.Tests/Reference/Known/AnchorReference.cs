namespace Byrelaw.Judging.Tests.Reference;

/// <summary>When she last had one of some events: on which days it may have been.</summary>
/// <param name="Never">It surely never happened.</param>
/// <param name="Recorded">The last one on record; null where it never happened or nothing is known.</param>
/// <param name="Later">Later days on which it may have happened unrecorded.</param>
public sealed record LastDays(bool Never, int? Recorded, IEnumerable<int> Later)
{
    public static readonly LastDays NotKnown = new(false, null, []);

    public bool IsNotKnown => !Never && Recorded is null;

    /// <summary>Every day on which the last one may have been.</summary>
    public IEnumerable<int> Days => Recorded is { } recorded ? Later.Prepend(recorded) : [];
}

/// <summary>"<c>last</c> always introduces her own events."</summary>
public sealed class AnchorReference(FarmAsRead farm, CoverageReference coverage)
{
    private readonly Dictionary<(int Animal, long Kinds, int Day, bool Strict), LastDays> _known = [];

    /// <summary>The days on which the last of these kinds may have been, as seen on a day.</summary>
    public LastDays Last(IReadOnlyList<Kind> kinds, int animal, int day, bool strict)
    {
        var key = (animal, kinds.Aggregate(0L, (set, kind) => set | (1L << kind.Id)), day, strict);
        if (!_known.TryGetValue(key, out var last))
        {
            last = Find(kinds, animal, day, strict);
            _known[key] = last;
        }

        return last;
    }

    private LastDays Find(IReadOnlyList<Kind> kinds, int animal, int day, bool strict)
    {
        var recorded = kinds.SelectMany(kind => farm.Of(animal, kind)).Where(row => row.Day <= day).Select(row => row.Day).ToList();
        if (recorded.Count > 0)
        {
            // "`last X` means the last recorded X where X is covered from then to d. Otherwise the answer stands only if it
            // would be the same for every later day on which X might have happened, else not known."
            var last = recorded.Max();
            return new LastDays(false, last, coverage.Uncovered(animal, kinds, last + 1, day, strict));
        }

        // "Never happened: X is not recorded and is covered from birth to d. ... Not recorded and not covered: not known."
        var birth = farm.Animals[animal].BornFirst ?? coverage.Dawn;
        return kinds.All(kind => coverage.Covers(animal, kind, birth, day, strict)) ? new LastDays(true, null, []) : LastDays.NotKnown;
    }
}
