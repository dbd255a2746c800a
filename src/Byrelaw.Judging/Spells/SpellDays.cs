namespace Byrelaw.Judging.Spells;

/// <summary>When animals are in a spell: by rows of their own, or by the company of their mob.</summary>
internal sealed class SpellDays
{
    private readonly OwnSpell _own;
    private readonly MobSpells _mobs;
    private readonly HerdDays _days;
    private readonly Spell _spell;

    public SpellDays(HerdDays days, Spell spell)
    {
        (_days, _spell) = (days, spell);
        _own = new OwnSpell(days.Own, spell, new SpellEnds(days.Herd, spell), new LostStartDays(days.Herd, spell));
        _mobs = new MobSpells(days, spell, _own);
    }

    /// <summary>The last day of some on which an animal surely was in the spell, and the last on which she may have been; int.MinValue for none.</summary>
    /// <param name="animal">Whose.</param>
    /// <param name="low">The first day looked at.</param>
    /// <param name="high">The last.</param>
    /// <param name="strict">Coverage stops at the known day.</param>
    /// <param name="notes">Where to write down what was found.</param>
    public (int Sure, int Maybe) Latest(int animal, int low, int high, bool strict, Notes? notes)
    {
        var (sure, maybe) = _own.Latest(animal, low, high, strict, notes);
        _mobs.Latest(animal, low, high, strict, ref sure, ref maybe, notes);
        return (sure, maybe);
    }

    /// <summary>The days on which this may change for an animal.</summary>
    public SpellEdges Edges(int animal) => new(
        new OwnEdges(_days, animal, _spell.From.Id), new DayAfterEdges(_days, animal, _spell.Until.Id), new AfterKnownEdges(_days.KnownDay),
        new SpellEndEdges(_own.Endings, animal), new LostStartEdges(_own.Lost, animal), _mobs.Edges(animal));
}

/// <summary>The days on which it may change whether an animal is in a spell.</summary>
internal readonly struct SpellEdges(OwnEdges starts, DayAfterEdges ends, AfterKnownEdges known, SpellEndEdges without, LostStartEdges lost, MobSpellEdges mobs) : IEdges
{
    public int Next(int day) => Math.Min(
        Math.Min(Math.Min(starts.Next(day), ends.Next(day)), known.Next(day)), Math.Min(Math.Min(without.Next(day), lost.Next(day)), mobs.Next(day)));
}
