namespace Byrelaw.Judging.Spells;

/// <summary>
/// The spells that rows about a mob or the herd begin and end. They are the mob's: whoever is in it is in the spell. Two starts may be two
/// bulls or one bull written twice, so one end after two of them leaves it open. A mob that moves takes its bull along, and may where it moves by a row for each;
/// where nobody surely is with him and nobody can say where one went, he may be in any mob until he is taken out.
/// </summary>
/// <param name="days">The herd as each animal's own rows begin spells: what else cannot be read may begin one in any mob.</param>
/// <param name="spell">Which.</param>
/// <param name="endings">What ends a spell without a row.</param>
/// <param name="females">Where they are, and who may have been the last of a mob.</param>
internal sealed class SpellsByMobRows(HerdDays days, Spell spell, SpellEnds endings, Lazy<FemalesInMobs> females)
{
    private readonly Herd _herd = days.Herd;
    private readonly int _mobs = days.Herd.Mobs.Names.Length + 1;
    private readonly HiddenMobRows _hidden = new(days.Herd, spell);

    /// <summary>Adds the stretches of each mob, of which the last is that of animals without one; and those of a bull who may be in any.</summary>
    public void AddTo(List<SpellStretch>[] stretches, List<SpellStretch> anywhere, bool strict)
    {
        var points = Points(strict);
        var (least, most) = (new int[_mobs], new int[_mobs]);
        var line = new int[_mobs];
        var open = new SpellStretch[_mobs];
        var astray = new bool[_mobs];
        SpellStretch openAnywhere = default;
        var (row, move, leaver) = (0, 0, 0);
        for (var i = 0; i < points.Count; i++)
        {
            var day = points[i];
            var (firstRow, firstMove) = (row, move);
            for (; row < _herd.MobRows.Spells.Length && _herd.MobRows.Spells[row].Day <= day; row++)
            {
            }

            for (; move < _herd.MobRows.Moves.Length && _herd.MobRows.Moves[move].Day <= day; move++)
            {
            }

            var (mayStart, mayEnd) = (_hidden.MayStart(day, strict), _hidden.MayEnd(day, strict));
            var today = new Truth[_mobs];
            for (var mob = 0; mob < _mobs; mob++)
            {
                var rows = CompanyRows.Of(_herd.MobRows.Spells.AsSpan(firstRow..row), spell, mob, day, ref line[mob]);
                today[mob] = rows.Starts > 0 || rows.End || least[mob] > 0 ? Truth.True : most[mob] > 0 || mayStart ? Truth.Unknown : Truth.False;
                (least[mob], most[mob]) = BullsAfterADay.Of(least[mob], most[mob], rows, mayStart, mayEnd, _hidden.UnreadOn(day));
            }

            for (var i2 = firstMove; i2 < move; i2++)
            {
                Carry(_herd.MobRows.Moves[i2], least, most, today, line, astray);
            }

            FollowLast(ref leaver, day, least, most, today, line, astray);
            ChangeAnywhere(anywhere, ref openAnywhere, astray, day, line);
            for (var mob = 0; mob < _mobs; mob++)
            {
                (least[mob], most[mob]) = endings.EndsAll(day) ? (0, 0) : (least[mob], most[mob]);
                astray[mob] &= most[mob] > 0;
                Change(stretches[mob], ref open[mob], today[mob], day, line[mob]);
                if (i + 1 == points.Count || points[i + 1] > day + 1)
                {
                    var after = least[mob] > 0 ? Truth.True : most[mob] > 0 || _hidden.MayStart(day + 1, strict) ? Truth.Unknown : Truth.False;
                    Change(stretches[mob], ref open[mob], after, day + 1, line[mob]);
                }
            }

            if (i + 1 == points.Count || points[i + 1] > day + 1)
            {
                ChangeAnywhere(anywhere, ref openAnywhere, astray, day + 1, line);
            }
        }

        for (var mob = 0; mob < _mobs; mob++)
        {
            Change(stretches[mob], ref open[mob], Truth.False, Day.End + 1, 0);
        }

        Change(anywhere, ref openAnywhere, Truth.False, Day.End + 1, 0);
    }

    private static void ChangeAnywhere(List<SpellStretch> anywhere, ref SpellStretch open, bool[] astray, int day, int[] line)
    {
        var first = Array.IndexOf(astray, true);
        Change(anywhere, ref open, first < 0 ? Truth.False : Truth.Unknown, day, first < 0 ? 0 : line[first]);
    }

    private static void Change(List<SpellStretch> stretches, ref SpellStretch open, Truth next, int day, int line)
    {
        if (next == open.State)
        {
            return;
        }

        if (open.State != Truth.False)
        {
            stretches.Add(open with { To = day - 1 });
        }

        open = new SpellStretch(day, day, next, Line: line);
    }

    /// <summary>A mob that moves takes along what runs in it; where a member stays, or may, both may have it.</summary>
    private void Carry(in MobMove move, int[] least, int[] most, Truth[] today, int[] line, bool[] astray)
    {
        for (var mob = 0; mob < _mobs; mob++)
        {
            if (mob == move.Target || (mob != move.Mob && move.Mob != MobStays.NotKnown) || today[mob] == Truth.False)
            {
                continue;
            }

            var all = AllMove(mob, move.Day);
            today[move.Target] = all && today[mob] == Truth.True ? Truth.True : today[move.Target] == Truth.False ? Truth.Unknown : today[move.Target];
            most[move.Target] += most[mob];
            least[move.Target] = all ? Math.Max(least[move.Target], least[mob]) : least[move.Target];
            line[move.Target] = line[mob];
            astray[move.Target] |= astray[mob];
            (least[mob], most[mob]) = (0, all ? 0 : most[mob]);
        }
    }

    /// <summary>
    /// Where the last females of a mob went by a row for each, or may have, its bull may have gone along, as he does when the mob moves by one row; he may
    /// have stayed, too. Where one may have gone anywhere, so may he.
    /// </summary>
    private void FollowLast(ref int leaver, int day, int[] least, int[] most, Truth[] today, int[] line, bool[] astray)
    {
        var leavers = females.Value.Leavers;
        while (leaver < leavers.Length && leavers[leaver].Day < day)
        {
            leaver++;
        }

        var first = leaver;
        while (leaver < leavers.Length && leavers[leaver].Day == day)
        {
            leaver++;
        }

        var anyLost = females.Value.AnyLost(day);
        if (first == leaver && !anyLost)
        {
            return;
        }

        var before = (int[])most.Clone();
        for (var mob = 0; mob < _herd.Mobs.Names.Length; mob++)
        {
            if (before[mob] == 0 || females.Value.AnyIn(mob, day))
            {
                continue;
            }

            astray[mob] |= anyLost;
            least[mob] = anyLost ? 0 : least[mob];
            var targets = leavers[first..leaver].Where(left => left.Target != mob && (left.Mob == mob || left.Mob == MobStays.NotKnown)).Select(left => left.Target);
            foreach (var target in targets.Distinct())
            {
                least[mob] = 0;
                today[target] = today[target] == Truth.False ? Truth.Unknown : today[target];
                most[target] += before[mob];
                line[target] = line[mob];
            }
        }
    }

    private bool AllMove(int mob, int day)
    {
        for (var animal = 0; animal < _herd.Count; animal++)
        {
            var now = _herd.Mobs.At(animal, day);
            if ((now == mob || (now == MobStays.NotKnown && _herd.Mobs.At(animal, day - 1) == mob)) && _herd.Membership.At(animal, day) != Presence.Out)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>The days on which anything may change, in order; between them nothing happens.</summary>
    private List<int> Points(bool strict)
    {
        var points = new SortedSet<int>();
        foreach (var row in _herd.MobRows.Spells)
        {
            if (row.Kind == spell.From.Id || row.Kind == spell.Until.Id)
            {
                points.Add(row.Day);
            }
        }

        var coverage = _herd.Coverage;
        points.UnionWith(_hidden.Edges);
        if (points.Count == 0)
        {
            return [];
        }

        foreach (var move in _herd.MobRows.Moves)
        {
            points.Add(move.Day);
        }

        points.UnionWith(females.Value.Leavers.Select(left => left.Day));
        points.UnionWith(females.Value.Edges);
        points.UnionWith(endings.OfAll);
        points.Add(coverage.SinceForAll(spell.Until.Id));
        points.Add(coverage.KnownDay);
        points.Add(coverage.KnownDay + 1);

        // After each of these days another begins.
        points.UnionWith(points.Where(day => day < Day.End).Select(day => day + 1).ToArray());
        points.RemoveWhere(day => day > Day.End);
        return [.. points];
    }
}
