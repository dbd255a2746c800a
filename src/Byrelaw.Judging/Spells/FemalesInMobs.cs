namespace Byrelaw.Judging.Spells;

/// <summary>
/// In which mobs females surely are, when: a bull is let in with somebody, and when the last of them has moved away he may have gone along.
/// </summary>
internal sealed class FemalesInMobs
{
    private readonly DaySet[] _days;
    private readonly DaySet _lost;

    /// <summary>Of a herd.</summary>
    public FemalesInMobs(Herd herd)
    {
        var stays = new List<(int From, int To)>[herd.Mobs.Names.Length];
        var lost = new List<(int From, int To)>();
        for (var mob = 0; mob < stays.Length; mob++)
        {
            stays[mob] = [];
        }

        for (var animal = 0; animal < herd.Count; animal++)
        {
            if (herd.Sexes[animal] == Sex.Female)
            {
                AddStays(herd, animal, stays, lost);
            }
        }

        _days = Array.ConvertAll(stays, hers => new DaySet(hers));
        _lost = new DaySet(lost);
        Leavers = [.. LeaversOf(herd).Distinct().OrderBy(left => left.Day)];
    }

    /// <summary>Moves of females who may have been the last in their mob: nobody surely stayed behind, or nobody knows which mob it was; by day.</summary>
    public ImmutableArray<Leaver> Leavers { get; }

    /// <summary>Days on which more may change than on those of the leavers: who may be anywhere, and so who surely is where.</summary>
    public IEnumerable<int> Edges => _lost.IsEmpty ? [] : _lost.Edges.Concat(_days.SelectMany(days => days.Edges));

    /// <summary>Whether one surely was in a mob on a day.</summary>
    public bool AnyIn(int mob, int day) => mob < _days.Length && _days[mob].Holds(day);

    /// <summary>Whether one may have gone anywhere, by a row that cannot be read or that others contradict.</summary>
    public bool AnyLost(int day) => _lost.Holds(day);

    private static void AddStays(Herd herd, int animal, List<(int From, int To)>[] stays, List<(int From, int To)> lost)
    {
        var (mobs, members) = (herd.Mobs, herd.Membership);
        for (var stay = mobs.Starts[animal]; stay < mobs.Starts[animal + 1]; stay++)
        {
            var (from, to) = (mobs.From[stay], stay + 1 < mobs.Starts[animal + 1] ? mobs.From[stay + 1] - 1 : Day.End);
            for (var place = members.Starts[animal]; place < members.Starts[animal + 1]; place++)
            {
                var (here, last) = (Math.Max(from, members.From[place]), Math.Min(to, place + 1 < members.Starts[animal + 1] ? members.From[place + 1] - 1 : Day.End));
                if (here > last || members.States[place] == Presence.Out)
                {
                    continue;
                }

                if (mobs.Mob[stay] >= 0 && members.States[place] == Presence.In)
                {
                    stays[mobs.Mob[stay]].Add((here, last));
                }
                else if (mobs.Mob[stay] < 0 && mobs.Lines[stay] != 0)
                {
                    lost.Add((here, last));
                }
            }
        }
    }

    private IEnumerable<Leaver> LeaversOf(Herd herd)
    {
        var (mobs, members) = (herd.Mobs, herd.Membership);
        for (var animal = 0; animal < herd.Count; animal++)
        {
            for (var stay = mobs.Starts[animal]; herd.Sexes[animal] == Sex.Female && stay < mobs.Starts[animal + 1]; stay++)
            {
                var (day, target) = (mobs.From[stay], mobs.Mob[stay]);
                if (target >= 0 && day > Day.Start && mobs.At(animal, day - 1) is var left && left != target && (left < 0 || !AnyIn(left, day))
                    && members.At(animal, day - 1) != Presence.Out && members.At(animal, day) != Presence.Out)
                {
                    yield return new Leaver(day, Math.Max(left, MobStays.NotKnown), target);
                }
            }
        }
    }
}

/// <summary>A female who may have been the last of a mob.</summary>
/// <param name="Day">The first day on which she was elsewhere.</param>
/// <param name="Mob">Which she left; <see cref="MobStays.NotKnown"/> where it may have been any.</param>
/// <param name="Target">Where she went.</param>
internal readonly record struct Leaver(int Day, int Mob, int Target);
