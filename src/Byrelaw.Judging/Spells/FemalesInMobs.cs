namespace Byrelaw.Judging.Spells;

/// <summary>
/// In which mobs females surely are, when: a bull is let in with somebody, and when the last of them has moved away he may have gone along.
/// </summary>
internal sealed class FemalesInMobs
{
    private readonly DaySet[] _days;

    /// <summary>Of a herd.</summary>
    public FemalesInMobs(Herd herd)
    {
        var stays = new List<(int From, int To, int Animal)>[herd.Mobs.Names.Length];
        for (var mob = 0; mob < stays.Length; mob++)
        {
            stays[mob] = [];
        }

        for (var animal = 0; animal < herd.Count; animal++)
        {
            if (herd.Sexes[animal] == Sex.Female)
            {
                AddStays(herd, animal, stays);
            }
        }

        _days = Array.ConvertAll(stays, hers => new DaySet([.. hers.Select(stay => (stay.From, stay.To))]));
        Emptied = [.. stays.SelectMany((hers, mob) => Left(herd, mob, hers)).OrderBy(left => left.Day).ThenBy(left => left.Mob)];
    }

    /// <summary>Days from which on no female surely is in a mob any more, with where those moved who were the last; by day.</summary>
    public ImmutableArray<EmptiedMob> Emptied { get; }

    /// <summary>Whether one surely was in a mob on a day.</summary>
    public bool AnyIn(int mob, int day) => mob < _days.Length && _days[mob].Holds(day);

    private static void AddStays(Herd herd, int animal, List<(int From, int To, int Animal)>[] stays)
    {
        var (mobs, members) = (herd.Mobs, herd.Membership);
        for (var stay = mobs.Starts[animal]; stay < mobs.Starts[animal + 1]; stay++)
        {
            var (from, to) = (mobs.From[stay], stay + 1 < mobs.Starts[animal + 1] ? mobs.From[stay + 1] - 1 : Day.End);
            for (var place = members.Starts[animal]; mobs.Mob[stay] >= 0 && place < members.Starts[animal + 1]; place++)
            {
                var (here, last) = (Math.Max(from, members.From[place]), Math.Min(to, place + 1 < members.Starts[animal + 1] ? members.From[place + 1] - 1 : Day.End));
                if (members.States[place] == Presence.In && here <= last)
                {
                    stays[mobs.Mob[stay]].Add((here, last, animal));
                }
            }
        }
    }

    private IEnumerable<EmptiedMob> Left(Herd herd, int mob, List<(int From, int To, int Animal)> stays)
    {
        foreach (var last in stays.Where(stay => stay.To < Day.End && !_days[mob].Holds(stay.To + 1)).GroupBy(stay => stay.To))
        {
            var day = last.Key + 1;
            int[] targets = [.. last.Where(stay => herd.Membership.At(stay.Animal, day) != Presence.Out).Select(stay => herd.Mobs.At(stay.Animal, day)).Where(target => target != mob).Distinct().Order()];
            if (targets.Length > 0)
            {
                yield return new EmptiedMob(mob, day, targets);
            }
        }
    }
}

/// <summary>A mob that all females have left.</summary>
/// <param name="Mob">Which.</param>
/// <param name="Day">The first day without them.</param>
/// <param name="Targets">Where the last of them went; <see cref="MobStays.NotKnown"/> where nobody says.</param>
internal sealed record EmptiedMob(int Mob, int Day, int[] Targets);
