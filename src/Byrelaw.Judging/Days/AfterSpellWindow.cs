namespace Byrelaw.Judging.Days;

/// <summary><c>from N days after last running with bull</c>: from N days after the last day of her last such spell; from her birth if there
/// was none. While it runs, or may, the window is empty, or may be.</summary>
internal sealed class AfterSpellWindow(HerdDays days, Spell spell, Reckoning wait) : WindowReader
{
    private readonly SpellDays _spell = days.InSpell(spell);

    public override int LowFrom(int anchor) => wait.After(anchor);

    public override int AnchorReaching(int low) => low >= Day.End ? low : wait.FirstReaching(low);

    public override WindowReading Read(int animal, int day, ref int until, Notes? notes)
    {
        var (sure, maybe) = _spell.Latest(animal, Day.Start, day, strict: false, null);
        var strict = day > days.KnownDay ? _spell.Latest(animal, Day.Start, day, strict: true, null) : (Sure: sure, Maybe: maybe);
        until = Math.Min(until, _spell.Edges(animal).Next(day) - 1);
        if (notes is not null)
        {
            // What it was before its last sure day is of no matter.
            _spell.Latest(animal, Math.Max(sure, Day.Start), day, strict: false, notes);
        }

        var low = Low(animal, sure);
        var latest = After(low, maybe);
        var strictLatest = Math.Max(latest, After(low, Math.Max(strict.Sure, strict.Maybe)));
        return new WindowReading(new Bounds(low, latest, strictLatest, day) { StrictlyEarlier = low - Math.Min(low, Low(animal, strict.Sure)) }, false, true, true);
    }

    public override (int From, int To)? InDoubt(int animal, int day, bool strict)
    {
        var (sure, maybe) = _spell.Latest(animal, Day.Start, day, strict, null);
        return maybe > sure ? (sure == int.MinValue ? Day.Start : sure + 1, maybe) : null;
    }

    public override bool MayHaveBeen(int animal, int day, bool strict) => _spell.Latest(animal, day, day, strict, null).Maybe == day;

    public override int NextTurn(int animal, int day) => _spell.Edges(animal).Next(day);

    private int Low(int animal, int sure) => sure == int.MinValue ? days.Herd.BornEarliest[animal] : wait.After(sure);

    private int After(int low, int last) => last == int.MinValue ? low : Math.Max(low, wait.After(last));
}
