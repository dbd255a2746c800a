namespace Byrelaw.Judging.Tests.Reference;

/// <summary>
/// "A spell's end without its start: the start, since the end before, joining or birth, is in doubt." She was not in the spell by her own rows,
/// and a row ends it; one that cannot be read and may be such an end counts as one on each of its days. A calving comes for its own reasons.
/// Of rows that tell of one and the same start, the one whose end is latest is named.
/// </summary>
public sealed class LostStartReference(FarmAsRead farm, Spell spell)
{
    /// <summary>The starts that are not on record.</summary>
    public static IEnumerable<Unread> Of(FarmAsRead farm, Vocabulary vocabulary) =>
        from spell in vocabulary.Spells
        where spell.Until != vocabulary.Calving
        from animal in farm.Animals
        from lost in new LostStartReference(farm, spell).Of(animal)
        select lost;

    private IEnumerable<Unread> Of(AnimalAsRead animal) =>
        from end in Ends(animal).ToList()
        where IsOut(animal, end.Day)
        group end by Since(animal, end.Day) into same
        let last = same.OrderByDescending(end => end.Day).ThenBy(end => end.Line).First()
        where last.Day - 1 >= same.Key
        select new Unread(animal.Index, spell.From, null, last.Line) { LostFrom = same.Key == int.MinValue ? null : same.Key, LostTo = last.Day - 1 };

    /// <summary>Each day on which a row ends it, or may.</summary>
    private IEnumerable<(int Day, int Line)> Ends(AnimalAsRead animal)
    {
        foreach (var row in farm.Of(animal.Index, spell.Until).Where(row => !HasStartOfItsMobs(row.Line, row.Day)))
        {
            yield return (row.Day, row.Line);
        }

        var first = Days(animal).Append(farm.Known).Append(animal.BornFirst ?? farm.Known).Min() - 2;
        foreach (var row in farm.Unread.Where(row => row.MayBeOf(animal) && row.MayBeA(spell.Until)))
        {
            for (var day = row.Day ?? first; day <= (row.Day ?? farm.Known); day++)
            {
                if (day >= CoverageReference.NeededFrom(animal, spell.Until) && !HasStartOfItsMobs(row.Line, day))
                {
                    yield return (day, row.Line);
                }
            }
        }
    }

    /// <summary>Whether she surely was not in it on a day's morning, and does not begin one on it.</summary>
    private bool IsOut(AnimalAsRead animal, int day)
    {
        var isIn = false;
        foreach (var each in Days(animal).Where(each => each <= day).Distinct().Order())
        {
            isIn = !Joins(animal, each) && isIn;
            if (each == day)
            {
                break;
            }

            isIn = (Starts(animal, each), Stops(animal, each)) switch { (true, false) => true, (false, true) => false, _ => isIn };
        }

        return !isIn && !Starts(animal, day);
    }

    /// <summary>The first day on which it may have begun.</summary>
    private int Since(AnimalAsRead animal, int day)
    {
        var ended = Days(animal).Where(each => each < day && Stops(animal, each)).Select(each => each + 1);
        var joined = Days(animal).Where(each => each <= day && Joins(animal, each));
        return ended.Concat(joined).Append(CoverageReference.NeededFrom(animal, spell.From)).Max();
    }

    private IEnumerable<int> Days(AnimalAsRead animal) => farm.Happenings.Where(row => row.Animal == animal.Index).Select(row => row.Day);

    private bool Starts(AnimalAsRead animal, int day) => farm.Of(animal.Index, spell.From).Any(row => row.Day == day && !row.OfGroup);

    private bool Stops(AnimalAsRead animal, int day) => farm.Of(animal.Index, spell.Until).Any(row => row.Day == day);

    private bool Joins(AnimalAsRead animal, int day) => farm.Happenings.Any(row => row.Animal == animal.Index && row.Day == day && row.Kind is EventKind { Effect: HerdEffect.Joins });

    /// <summary>Of a row of a mob or the herd: a row of that mob, or of the herd, began it, and none since has ended it. Where whole mobs moved
    /// since, nobody can say whose it was.</summary>
    private bool HasStartOfItsMobs(int line, int day)
    {
        if (farm.GroupEvents.FirstOrDefault(row => row.Line == line) is not { Mob: var mob })
        {
            return false;
        }

        var rows = farm.GroupEvents.Where(row => row.Line != line && row.Day <= day && (row.Mob is null || mob is null || row.Mob == mob)).ToList();
        return rows.Any(start => start.Kind.Id == spell.From.Id
            && !rows.Any(end => end.Kind.Id == spell.Until.Id && end.Day >= start.Day && end.Day < day)
            && !farm.GroupEvents.Any(move => move.Target is not null && move.Day >= start.Day && move.Day <= day));
    }
}
