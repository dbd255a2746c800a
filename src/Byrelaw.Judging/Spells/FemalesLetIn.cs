namespace Byrelaw.Judging.Spells;

/// <summary>
/// Females that a row of their own puts in with a male: among her mob mates he may run with them too. Where nobody says in which mob she is, he may be in any. On a farm
/// without mobs nothing says who stands with whom but such a row.
/// </summary>
/// <param name="days">The herd.</param>
/// <param name="where">Who is in which mob.</param>
/// <param name="own">Whether an animal is in the spell by rows of its own.</param>
/// <param name="spell">Which spell.</param>
internal sealed class FemalesLetIn(HerdDays days, Whereabouts where, OwnSpell own, Spell spell)
{
    private readonly Herd _herd = days.Herd;
    private readonly KindRun _starts = days.Herd.OwnRun(spell.From.Id);
    private readonly KindRun _ends = days.Herd.Runs[spell.Until.Id];

    // Rows of single animals that are such a start and cannot be read, and starts of which only the end is on record.
    private readonly ILookup<int, Gap> _mayStart = days.Herd.Coverage.Gaps
        .Where(gap => gap.Animal >= 0 && (gap.Kind == spell.From.Id || gap.Like == spell.From.Id) && (gap.IsLostStart ? IsEndOfHers(days.Herd, spell, gap) : !days.Herd.MobRows.Lines.Contains(gap.Line))).ToLookup(gap => gap.Animal);

    /// <summary>Adds the stretches of each mob; and to the last list those of one who may be in any.</summary>
    public void AddTo(List<SpellStretch>[] stretches, List<SpellStretch> anywhere, bool strict)
    {
        for (var animal = 0; animal < _herd.Count && spell.WithMaleFrom is not null; animal++)
        {
            if (_herd.Sexes[animal] == Sex.Female && (_starts.Starts[animal] < _starts.Starts[animal + 1] || _mayStart.Contains(animal)))
            {
                Add(animal, stretches, anywhere, strict);
            }
        }
    }

    private void Add(int animal, List<SpellStretch>[] stretches, List<SpellStretch> anywhere, bool strict)
    {
        for (var (day, next) = (Day.Start, 0); day <= Day.End; day = next)
        {
            next = NextEdge(animal, day);
            if (_herd.Membership.At(animal, day) == Presence.Out || !IsLetIn(animal, day, strict))
            {
                continue;
            }

            var stretch = new SpellStretch(day, Math.Min(next - 1, Day.End), Truth.Unknown, animal);
            AddIn(where.On(animal, day, strict), stretch, stretches, anywhere);
            if (where.MorningOf(animal, day, strict) is { } morning)
            {
                AddIn(morning, stretch, stretches, anywhere);
            }
        }
    }

    private void AddIn(int mob, SpellStretch stretch, List<SpellStretch>[] stretches, List<SpellStretch> anywhere)
    {
        if (mob != where.Blank)
        {
            (mob == MobStays.NotKnown ? anywhere : stretches[mob]).Add(stretch);
        }
    }

    /// <summary>Whether it is a row of hers that is known to take a bull out: one of which nobody can tell the kind, nor what it is spelt like, is doubt for her alone.</summary>
    private static bool IsEndOfHers(Herd herd, Spell spell, Gap gap)
    {
        var ends = herd.OwnRun(spell.Until.Id);
        return Array.IndexOf(ends.Lines, gap.Line, ends.Starts[gap.Animal], ends.Starts[gap.Animal + 1] - ends.Starts[gap.Animal]) >= 0
            || (!herd.MobRows.Lines.Contains(gap.Line) && herd.Coverage.Gaps.Any(end => end.Animal == gap.Animal && (end.Kind == spell.Until.Id || end.Like == spell.Until.Id) && end.Line == gap.Line && !end.IsLostStart));
    }

    /// <summary>Whether she is in, or may be, by a row of hers and not only because a promise is missing.</summary>
    private bool IsLetIn(int animal, int day, bool strict)
    {
        var (sure, maybe) = own.Latest(animal, day, day, strict, null);
        if (sure != day && maybe != day)
        {
            return false;
        }

        var start = Runs.LastAtMost(_starts, animal, day);
        return (start >= _starts.Starts[animal] && !IsOver(animal, _starts.Days[start], day))
            || _mayStart[animal].Any(gap => gap.From <= day && (gap.IsLostStart ? day <= gap.To + 1 : !IsOver(animal, gap.To, day)));
    }

    /// <summary>Whether an end stands between a start and a day.</summary>
    private bool IsOver(int animal, int start, int day)
    {
        var last = Runs.LastAtMost(_ends, animal, day - 1);
        return last >= _ends.Starts[animal] && _ends.Days[last] > start;
    }

    private int NextEdge(int animal, int day)
    {
        var edge = Math.Min(where.NextEdge(animal, day), days.Own.NextEdge(animal, spell.From.Id, day));
        edge = Math.Min(edge, new DayAfterEdges(days.Own, animal, spell.Until.Id).Next(day));
        edge = Math.Min(edge, Math.Min(new SpellEndEdges(own.Endings, animal).Next(day), new LostStartEdges(own.Lost, animal).Next(day)));
        return edge == int.MaxValue ? Day.End + 1 : edge;
    }
}
