namespace Byrelaw.Records.Building;

/// <summary>
/// Over which days all moves from mob to mob are on record. On other days a mob's row may be anybody's: nobody says
/// where she was.
/// </summary>
internal sealed class MobKept
{
    private readonly MembershipBuilder _membership;
    private readonly int _since;
    private readonly int _reach;
    private readonly Hole[] _holes;

    private MobKept(MembershipBuilder membership, int since, int reach, Hole[] holes, List<int> elsewhere)
    {
        _membership = membership;
        _since = since;
        _reach = reach;
        _holes = holes;
        Elsewhere = elsewhere;
    }

    /// <summary>Animals that may have been here on days from before they joined last, or after they left.</summary>
    public IReadOnlyList<int> Elsewhere { get; }

    /// <summary>Works it out from what the farm promises.</summary>
    /// <param name="vocabulary">The words.</param>
    /// <param name="keeping">What the farm says; null for nothing.</param>
    /// <param name="knownDay">The day the records reach.</param>
    /// <param name="kept">From when to when the farm can have kept records of each animal.</param>
    /// <param name="presence">Who is in the herd.</param>
    /// <param name="stages">Rows of single animals.</param>
    /// <param name="groups">Rows of mobs and the herd.</param>
    public static MobKept Of(Vocabulary vocabulary, RecordKeeping? keeping, int knownDay, MembershipBuilder kept, Membership presence, EventStage[] stages, IReadOnlyList<GroupRow> groups)
    {
        var move = vocabulary.MobMove.Id;
        var reach = new int[vocabulary.ById.Length];
        Array.Fill(reach, keeping?.UpTo is null ? LatestMove(stages, groups, move) : knownDay);
        var promised = Promised.Of(vocabulary, keeping, reach, knownDay);
        var elsewhere = new List<int>();
        for (var animal = 0; animal < kept.Joined.Length; animal++)
        {
            if (MayBeHereElsewhen(presence, animal, kept.Joined[animal], kept.Left[animal]))
            {
                elsewhere.Add(animal);
            }
        }

        return new MobKept(kept, promised.Since[move], promised.Reach[move], [.. promised.Holes.Where(hole => hole.Kind == move)], elsewhere);
    }

    /// <summary>Whether the farm says that all moves of a day are on record.</summary>
    public bool Covers(int day)
    {
        if (day < _since || day > _reach)
        {
            return false;
        }

        foreach (var hole in _holes)
        {
            if (day >= hole.From && day <= hole.To)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>The same of one animal.</summary>
    public bool Covers(int animal, int day) => day >= _membership.Joined[animal] && day <= _membership.Left[animal] && Covers(day);

    /// <summary>The latest day on which anyone moved, or a mob; the first of all days for none.</summary>
    private static int LatestMove(EventStage[] stages, IReadOnlyList<GroupRow> groups, int move)
    {
        var latest = groups.Where(row => row.Kind == move).Select(row => row.Day).DefaultIfEmpty(Day.Start).Max();
        foreach (var stage in stages)
        {
            for (var chunk = 0; chunk < stage.Moves.ChunkCount; chunk++)
            {
                foreach (ref var row in stage.Moves.Chunk(chunk))
                {
                    latest = row.Animal == Staged<int>.TakenOut ? latest : Math.Max(latest, row.Day);
                }
            }
        }

        return latest;
    }

    private static bool MayBeHereElsewhen(Membership presence, int animal, int joined, int left)
    {
        for (var place = presence.Starts[animal]; place < presence.Starts[animal + 1]; place++)
        {
            var last = place + 1 < presence.Starts[animal + 1] ? presence.From[place + 1] - 1 : Day.End;
            if (presence.States[place] != Presence.Out && (presence.From[place] < joined || last > left))
            {
                return true;
            }
        }

        return false;
    }
}
