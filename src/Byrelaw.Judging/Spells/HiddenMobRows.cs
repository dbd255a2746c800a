namespace Byrelaw.Judging.Spells;

/// <summary>
/// Starts and ends of a spell that may have happened in any mob, and that nobody wrote down or nobody can read. That a bull was in before the farm promised anything is for each
/// animal that was there to answer, not for the mob.
/// </summary>
internal sealed class HiddenMobRows(Herd herd, Spell spell)
{
    private readonly DaySet _starts = Hidden(herd, spell.From.Id);
    private readonly DaySet _ends = Hidden(herd, spell.Until.Id);
    private readonly Dictionary<int, int> _unread = Unread(herd, spell.From.Id);

    /// <summary>The days on which it may change whether any is hidden.</summary>
    public IEnumerable<int> Edges => _starts.Edges.Concat(_ends.Edges);

    /// <summary>Whether one may have begun on a day.</summary>
    /// <param name="day">When.</param>
    /// <param name="strict">Coverage stops at the known day.</param>
    public bool MayStart(int day, bool strict) => day > herd.Coverage.KnownDay ? strict : _starts.Holds(day);

    /// <summary>Whether one may have ended on a day.</summary>
    /// <param name="day">When.</param>
    /// <param name="strict">Coverage stops at the known day.</param>
    public bool MayEnd(int day, bool strict) => day > herd.Coverage.KnownDay ? strict : day < herd.Coverage.SinceForAll(spell.Until.Id) || _ends.Holds(day);

    /// <summary>How many rows of a day cannot be read and may be a start in any mob.</summary>
    public int UnreadOn(int day) => _unread.GetValueOrDefault(day);

    private static DaySet Hidden(Herd herd, int kind)
    {
        var stretches = new List<(int From, int To)>();
        foreach (var hole in herd.Coverage.Holes)
        {
            if (hole.Animal < 0 && hole.Kind == kind)
            {
                stretches.Add((hole.From, hole.To));
            }
        }

        foreach (var gap in herd.Coverage.Gaps)
        {
            if (MayBeOfAnyMob(herd, gap, kind))
            {
                stretches.Add((gap.From, gap.To));
            }
        }

        return new DaySet(stretches);
    }

    private static Dictionary<int, int> Unread(Herd herd, int kind)
    {
        var rows = new Dictionary<int, int>();
        foreach (var gap in herd.Coverage.Gaps)
        {
            if (gap.From == gap.To && MayBeOfAnyMob(herd, gap, kind))
            {
                rows[gap.From] = rows.GetValueOrDefault(gap.From) + 1;
            }
        }

        return rows;
    }

    private static bool MayBeOfAnyMob(Herd herd, in Gap gap, int kind) => gap.Animal < 0 && (gap.Kind == kind || gap.Kind < 0) && !herd.MobRows.Lines.Contains(gap.Line);
}
