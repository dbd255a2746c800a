namespace Byrelaw.Judging.Spells;

/// <summary>
/// Whether rows put a bull in before a day and do not take him out: that what comes will be written down does not take him out. A row that cannot be read
/// may put one in too, in any mob, or with the one animal that it names.
/// </summary>
internal sealed class OpenOnRecord(Herd herd, Spell spell)
{
    private readonly MobRow[] _herdsEnds = Array.FindAll(herd.MobRows.Spells, row => row.Kind == spell.Until.Id && row.Mob == MobStays.NotKnown);

    // By animal, -1 for any: the days of rows that may be a start.
    private readonly ILookup<int, int> _unread = herd.Coverage.Gaps
        .Where(gap => gap is { IsHint: false, IsOfSheet: false, IsLostStart: false, IsOfDetails: false } && !herd.MobRows.Lines.Contains(gap.Line)
            && (gap.Kind == spell.From.Id || (gap.Kind < 0 && gap.Animal < 0))).ToLookup(gap => gap.Animal, gap => gap.From);

    /// <summary>Whether any mob, or any animal that is still here, has one.</summary>
    public bool AnyBefore(int day)
    {
        int[] days = [.. herd.MobRows.Spells.Select(row => row.Day).Concat(_unread[-1]).Where(each => each < day).Distinct().Order()];
        for (var mob = 0; mob <= herd.Mobs.Names.Length; mob++)
        {
            if (StaysIn(mob, days))
            {
                return true;
            }
        }

        for (var animal = 0; animal < herd.Count; animal++)
        {
            if (herd.Membership.At(animal, day) != Presence.Out && StaysWith(animal, day))
            {
                return true;
            }
        }

        return false;
    }

    private bool StaysIn(int mob, int[] days)
    {
        var (most, line) = (0, 0);
        foreach (var day in days)
        {
            most = After(most, CompanyRows.Of(herd.MobRows.Spells, spell, mob, day, ref line), _unread[-1].Count(each => each == day));
        }

        return most > 0;
    }

    /// <summary>By rows of her own; a mob's or the herd's that takes a bull out takes hers, too.</summary>
    private bool StaysWith(int animal, int before)
    {
        var starts = herd.OwnRun(spell.From.Id).DaysOf(animal);
        if (starts.IsEmpty && !_unread.Contains(animal))
        {
            return false;
        }

        var most = 0;
        var ends = herd.Runs[spell.Until.Id].DaysOf(animal);
        int[] days = [.. starts, .. ends, .. _unread[animal]];
        foreach (var day in days.Where(day => day < before).Distinct().Order())
        {
            var rows = new CompanyRows(starts.Count(day), ends.Contains(day), Array.Exists(_herdsEnds, row => row.Day == day));
            most = After(most, rows, _unread[animal].Count(each => each == day));
        }

        return most > 0;
    }

    private static int After(int most, in CompanyRows rows, int unread) => BullsAfterADay.Of(0, most, rows, mayStart: unread > 0, mayEnd: false, unread).Most;
}
