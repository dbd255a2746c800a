namespace Byrelaw.Judging.Tests.Reference;

/// <summary>
/// "On the day she leaves she is out, on the day she joins she is in. An unreadable joining/leaving row makes presence not
/// known from its first possible day (for all animals if the animal is unreadable)."
/// </summary>
public sealed class PresenceReference
{
    private readonly FarmAsRead _farm;
    private readonly Dictionary<int, List<(int Day, HerdEffect Effect, bool IsForGood)>> _changes;
    private readonly List<Unread> _unread;
    private readonly Dictionary<(int Animal, int Day), Truth> _found = [];

    public PresenceReference(FarmAsRead farm, RowSorting rows)
    {
        _farm = farm;
        _unread = [.. rows.Unread.Where(row => row.MayJoinOrLeave)];
        _changes = rows.Happenings
            .Where(row => row.Kind is EventKind { Effect: not HerdEffect.None })
            .GroupBy(row => row.Animal)
            .ToDictionary(rows => rows.Key, rows => rows.Select(row => (row.Day, ((EventKind)row.Kind).Effect, ((EventKind)row.Kind).IsForGood)).OrderBy(row => row.Day).ToList());
    }

    /// <summary>Whether she is in the herd on a day.</summary>
    public Truth At(int animal, int day)
    {
        if (!_found.TryGetValue((animal, day), out var found))
        {
            found = Find(animal, day);
            _found[(animal, day)] = found;
        }

        return found;
    }

    private Truth Find(int animal, int day)
    {
        var born = _farm.Animals[animal];
        if (born.BornFirst is { } first && day < first)
        {
            return Truth.False;
        }

        var changes = _changes.GetValueOrDefault(animal) ?? [];
        var last = changes.LastOrDefault(change => change.Day <= day, (Day: int.MinValue, Effect: HerdEffect.None, IsForGood: false));
        var hidden = _unread.Where(row => row.MayBeOf(_farm.Animals[animal])).ToList();
        if (hidden.Any(row => row.MayBeIn(last.Day, day)))
        {
            return Truth.Unknown;
        }

        // "For good: joined on the same day, she is out; joined later, her presence is not known." A row that may be one counts as one.
        if (changes.LastOrDefault(change => change.Day <= day && change.IsForGood) is { IsForGood: true } good)
        {
            return changes.Any(change => change.Effect == HerdEffect.Joins && change.Day > good.Day && change.Day <= day)
                || hidden.Any(row => row.MayJoin && row.MayBeIn(good.Day + 1, day)) ? Truth.Unknown : Truth.False;
        }

        if (last.Effect != HerdEffect.None)
        {
            // Left and returned on one day: not known from that day to the next row about it.
            var both = changes.Where(change => change.Day == last.Day).Select(change => change.Effect).Distinct().Count() > 1;
            return both ? Truth.Unknown : Kleene.Of(last.Effect == HerdEffect.Joins);
        }

        // Nothing on record up to this day: she is born here, unless the next row says that she joins later.
        var next = changes.FirstOrDefault(change => change.Day > day, (Day: int.MaxValue, Effect: HerdEffect.None, IsForGood: false));
        var nextJoins = changes.Any(change => change.Day == next.Day && change.Effect == HerdEffect.Joins);
        var nextLeaves = changes.Any(change => change.Day == next.Day && change.Effect == HerdEffect.Leaves);
        if (nextJoins && !nextLeaves)
        {
            // She may have left, and been bought back.
            return hidden.Any(row => row.MayLeave && row.MayBeIn(day, next.Day)) ? Truth.Unknown : Truth.False;
        }

        if ((nextJoins && nextLeaves) || hidden.Any(row => row.MayJoin && row.MayBeIn(day, next.Day)))
        {
            return Truth.Unknown;
        }

        return born.BornLast is { } latest && day < latest ? Truth.Unknown : Truth.True;
    }

    /// <summary>
    /// "For one animal, coverage of a kind starts at the later of the declared date and her latest event that joins the
    /// herd." A row that may be one counts as one, on its last possible day: else garbling her purchase would make her born here.
    /// </summary>
    public int CoveredFrom(int animal) => _unread.Where(row => row.MayJoin && row.MayBeOf(_farm.Animals[animal])).Select(row => row.Day ?? int.MaxValue)
        .Append(SurelyJoined(animal)).Max();

    /// <summary>
    /// "... and ends at one that leaves it": the last day covered. A row that may be one counts as one, on its first possible day.
    /// Only a joining that surely was hers brings her back: one that only may have been leaves her gone.
    /// </summary>
    public int CoveredUntil(int animal)
    {
        var since = SurelyJoined(animal);
        var left = (_changes.GetValueOrDefault(animal) ?? [])
            .Where(change => change.Effect == HerdEffect.Leaves && change.Day >= since && !(change.Day == since && At(animal, since + 1) == Truth.True))
            .Select(change => change.Day);
        var perhaps = _unread.Where(row => row.MayLeave && row.MayBeOf(_farm.Animals[animal])).Select(row => row.Day ?? since).Where(day => day >= since);
        return left.Concat(perhaps).DefaultIfEmpty(int.MaxValue).Min();
    }

    private int SurelyJoined(int animal) => (_changes.GetValueOrDefault(animal) ?? [])
        .Where(change => change.Effect == HerdEffect.Joins).Select(change => change.Day).DefaultIfEmpty(int.MinValue).Max();
}
