namespace Byrelaw.Records.Building;

/// <summary>Finds out which animals an event of a mob or of the whole herd means.</summary>
internal static class GroupEvents
{
    /// <summary>Goes through the rows, day by day.</summary>
    /// <param name="rows">Rows of events; their mobs are known.</param>
    /// <param name="stays">Who is in which mob.</param>
    /// <param name="presence">Who can be meant on that day: whoever is in the herd; not known makes a gap.</param>
    /// <param name="moves">The days over which all moves are on record; null to take those on record for all.</param>
    /// <param name="isMeant">Told of each animal that a row means.</param>
    /// <param name="isDoubtful">Takes a gap for each animal of which it is not known whether a row means her.</param>
    public static void Expand(
        IEnumerable<GroupRow> rows, MobStays stays, Func<int, GroupRow, Presence> presence, MobKept? moves,
        Action<int, GroupRow> isMeant, Action<Gap> isDoubtful)
    {
        var animals = stays.Starts.Length - 1;
        MobSweep? sweep = null;
        foreach (var row in rows.OrderBy(row => row.Day).ThenBy(row => row.Line))
        {
            if (row.Mob == GroupRow.WholeHerd)
            {
                for (var animal = 0; animal < animals; animal++)
                {
                    Tell(animal, row, presence(animal, row));
                }

                continue;
            }

            if (moves?.Covers(row.Day) == false)
            {
                // Nobody says who was in which mob: it may be anybody's.
                isDoubtful(new Gap(-1, row.Kind, row.Day, row.Day, row.Line));
                continue;
            }

            sweep ??= new MobSweep(stays, animals);
            sweep.GoTo(row.Day);
            foreach (var animal in sweep.In(row.Mob))
            {
                var state = presence(animal, row);
                Tell(animal, row, state == Presence.In && moves?.Covers(animal, row.Day) == false ? Presence.NotKnown : state);
            }

            foreach (var animal in sweep.In(MobStays.NotKnown))
            {
                TellPerhaps(animal, row);
            }

            foreach (var animal in moves?.Elsewhere ?? [])
            {
                if (sweep.MobOf(animal) != row.Mob && sweep.MobOf(animal) != MobStays.NotKnown && !moves!.Covers(animal, row.Day))
                {
                    TellPerhaps(animal, row);
                }
            }
        }

        void TellPerhaps(int animal, GroupRow row)
        {
            if (presence(animal, row) != Presence.Out)
            {
                Tell(animal, row, Presence.NotKnown);
            }
        }

        void Tell(int animal, GroupRow row, Presence state)
        {
            if (state == Presence.In)
            {
                isMeant(animal, row);
            }
            else if (state == Presence.NotKnown)
            {
                isDoubtful(new Gap(animal, row.Kind, row.Day, row.Day, row.Line));
            }
        }
    }
}
