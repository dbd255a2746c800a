namespace Byrelaw.Judging.Spells;

/// <summary>
/// Days that end every spell without a row: the day before the farm says that there is none, or says with a reason and an agreement
/// that all is written down while no grown male is there and none was put in on record and not taken out; and for one animal the day she joins the herd.
/// </summary>
internal sealed class SpellEnds
{
    private readonly Herd _herd;
    private readonly int[] _joins;

    public SpellEnds(Herd herd, Spell spell)
    {
        _herd = herd;
        _joins = [.. herd.Vocabulary.Kinds.Where(kind => kind is EventKind { Effect: HerdEffect.Joins }).Select(kind => kind.Id)];
        var days = new SortedSet<int>();
        if (herd.Coverage.NoneOf(spell.From.Id) is var none and < Day.End)
        {
            days.Add(none - 1);
        }

        if (AgreedFrom(herd, spell) is var agreed and < Day.End && !GrownMaleOn(herd, spell, agreed) && !new OpenOnRecord(herd, spell).AnyBefore(agreed))
        {
            days.Add(agreed - 1);
        }

        OfAll = [.. days];
    }

    /// <summary>The last days on which a spell from before can have run, whoever's.</summary>
    public int[] OfAll { get; }

    /// <summary>The first day on or after another that ends all spells, or on which she joins; int.MaxValue for none.</summary>
    public int Next(int animal, int day)
    {
        var next = int.MaxValue;
        foreach (var end in OfAll)
        {
            next = end >= day ? Math.Min(next, end) : next;
        }

        foreach (var kind in _joins)
        {
            foreach (var joined in _herd.Runs[kind].DaysOf(animal))
            {
                next = joined >= day ? Math.Min(next, joined) : next;
            }
        }

        return next;
    }

    /// <summary>Whether a day ends the spells of all.</summary>
    public bool EndsAll(int day) => Array.IndexOf(OfAll, day) >= 0;

    private static int AgreedFrom(Herd herd, Spell spell)
    {
        var (coverage, from, until) = (herd.Coverage, spell.From.Id, spell.Until.Id);
        return coverage.AgreedFrom.Length > 0 && coverage.AgreedFrom[from] == coverage.AgreedFrom[until]
            && coverage.Since[from] < Day.End && coverage.Since[until] < Day.End
            ? coverage.AgreedFrom[from]
            : Day.End;
    }

    private static bool GrownMaleOn(Herd herd, Spell spell, int day)
    {
        for (var animal = 0; animal < herd.Count; animal++)
        {
            if (herd.Sexes[animal] is Sex.Male or Sex.NotKnown && herd.Membership.At(animal, day) != Presence.Out
                && (spell.WithMaleFrom is not { } age || herd.BornEarliest[animal] <= Day.Start || age.After(Day.Date(herd.BornEarliest[animal])) <= Day.Date(day)))
            {
                return true;
            }
        }

        return false;
    }
}

/// <summary>The days on which one animal's spells end without a row, and the days after them.</summary>
internal readonly struct SpellEndEdges(SpellEnds ends, int animal) : IEdges
{
    public int Next(int day)
    {
        var end = ends.Next(animal, day);
        return end == day ? day + 1 : end;
    }
}
