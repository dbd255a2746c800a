namespace Byrelaw.Judging.Spells;

/// <summary>Which mob an animal was in, as far as the farm says that all moves are on record.</summary>
internal sealed class Whereabouts
{
    private readonly HerdDays _days;
    private readonly int _move;
    private readonly int _noMobsFrom;

    public Whereabouts(HerdDays days)
    {
        _days = days;
        _move = days.Herd.Vocabulary.MobMove.Id;
        _noMobsFrom = days.Herd.Coverage.NoneOf(_move);
        Blank = days.Herd.Mobs.Names.Length;
    }

    /// <summary>The mob of all whose column is blank on a farm that has none; it stands after the named ones.</summary>
    public int Blank { get; }

    /// <summary>The mob on the evening of a day; <see cref="MobStays.NotKnown"/> where moves are not promised or cannot be read.</summary>
    public int On(int animal, int day, bool strict)
    {
        var mobs = _days.Herd.Mobs;
        if (day >= _noMobsFrom)
        {
            return mobs.Columns[animal] >= 0 ? mobs.Columns[animal] : mobs.Columns[animal] == MobStays.NotKnown ? Blank : MobStays.NotKnown;
        }

        return IsKnown(animal, day, day, strict) ? mobs.At(animal, day) : MobStays.NotKnown;
    }

    /// <summary>Whether she has no mob on a farm without mobs.</summary>
    public bool IsWithout(int animal, int day) => day >= _noMobsFrom && _days.Herd.Mobs.Columns[animal] == MobStays.NotKnown;

    /// <summary>The mob that she was in on the morning of a day on which she moved; null where she did not, or was not here.</summary>
    public int? MorningOf(int animal, int day, bool strict) =>
        MovesOn(animal, day) && _days.Herd.Membership.At(animal, day - 1) != Presence.Out ? On(animal, day - 1, strict) : null;

    /// <summary>Whether all moves of these days are on record.</summary>
    public bool IsKnown(int animal, int from, int to, bool strict) =>
        to < from || (_days.Covers(animal, _move, from, to) && !(strict && _days.IsOpen(animal, _move, to)));

    /// <summary>Whether a move of hers is on record from one day to another.</summary>
    public bool MovesBetween(int animal, int from, int to)
    {
        var run = _days.Herd.Runs[_move];
        var last = Runs.LastAtMost(run, animal, to);
        return last >= run.Starts[animal] && run.Days[last] >= from;
    }

    /// <summary>The first day after another on which anything of this may change.</summary>
    public int NextEdge(int animal, int day)
    {
        var edge = Math.Min(_days.NextEdge(animal, _move, day), new AfterKnownEdges(_days.KnownDay).Next(day));
        edge = day < _noMobsFrom ? Math.Min(edge, _noMobsFrom) : edge;
        var mobs = _days.Herd.Mobs;
        for (var stay = mobs.Starts[animal]; stay < mobs.Starts[animal + 1]; stay++)
        {
            if (mobs.From[stay] > day)
            {
                edge = Math.Min(edge, mobs.From[stay]);
                break;
            }
        }

        var members = _days.Herd.Membership;
        for (var place = members.Starts[animal]; place < members.Starts[animal + 1]; place++)
        {
            if (members.From[place] > day)
            {
                edge = Math.Min(edge, members.From[place]);
                break;
            }
        }

        return edge;
    }

    private bool MovesOn(int animal, int day) => MovesBetween(animal, day, day);
}
