namespace Byrelaw.Judging.Spells;

/// <summary>
/// Males that are grown, or were let in by a row of their own, and the mobs they run with. One that was taken out by his own row is with
/// nobody until he moves. Where nobody says in which mob he is, he may be in any; so he may where a row lets him in, and no female is in his mob: with whom, it does not say.
/// </summary>
/// <param name="days">The herd.</param>
/// <param name="where">Who is in which mob.</param>
/// <param name="own">Whether an animal is in the spell by rows of its own.</param>
/// <param name="spell">Which spell.</param>
/// <param name="females">In which mobs females are.</param>
internal sealed class MalesInMobs(HerdDays days, Whereabouts where, OwnSpell own, Spell spell, Lazy<FemalesInMobs> females)
{
    /// <summary>In place of an animal: one whose number cannot be read.</summary>
    public const int WithoutNumber = -2;

    private readonly Herd _herd = days.Herd;
    private readonly KindRun _starts = days.Herd.OwnRun(spell.From.Id);
    private readonly KindRun _ends = days.Herd.OwnRun(spell.Until.Id);

    // Rows of single animals that may let one in, and cannot be read.
    private readonly ILookup<int, Gap> _mayStart = days.Herd.Coverage.Gaps
        .Where(gap => gap.Animal >= 0 && (gap.Kind == spell.From.Id || gap.Kind < 0) && (gap.IsLostStart || !days.Herd.MobRows.Lines.Contains(gap.Line))).ToLookup(gap => gap.Animal);

    /// <summary>In place of an animal: one that a row moves and nobody listed.</summary>
    public const int NotListed = -3;

    /// <summary>Adds the stretches of each mob; and to the last list those of a male who may be in any.</summary>
    public void AddTo(List<SpellStretch>[] stretches, List<SpellStretch> anywhere, bool strict)
    {
        if (spell.WithMaleFrom is not { } age)
        {
            return;
        }

        for (var animal = 0; animal < _herd.Count; animal++)
        {
            if (_herd.Sexes[animal] is Sex.Male or Sex.NotKnown)
            {
                Add(animal, age, stretches, anywhere, strict);
            }
        }

        // One that nobody listed may be a bull, wherever he was moved to.
        foreach (var row in _herd.MobRows.Strangers)
        {
            AddIn(row.Mob, new SpellStretch(row.Day, Day.End, Truth.Unknown, NotListed, row.Line), stretches, anywhere);
        }

        // A row whose number cannot be read may be a bull's.
        if (_herd.AnimalsWithoutNumber > 0)
        {
            anywhere.Add(new SpellStretch(Day.Start, Day.End, Truth.Unknown, WithoutNumber));
        }
    }

    private void Add(int male, TimeLength age, List<SpellStretch>[] stretches, List<SpellStretch> anywhere, bool strict)
    {
        var (mayBeGrown, isGrown) = (GrownFrom(_herd.BornEarliest[male], age), GrownFrom(_herd.BornLatest[male], age));
        var startsOwn = _starts.Starts[male] < _starts.Starts[male + 1];
        var day = startsOwn || where.IsWithout(male, Day.End) ? Day.Start : Math.Min(mayBeGrown, days.Coverage.NeededFrom[spell.From.Id][male]);
        day = Math.Max(day, FirstHere(male));
        while (day <= Day.End)
        {
            var next = NextEdge(male, day, mayBeGrown, isGrown);
            var truth = And(_herd.Sexes[male] == Sex.Male ? Truth.True : Truth.Unknown, InMob(male, day, mayBeGrown, isGrown, strict));
            var here = _herd.Membership.At(male, day);
            truth = here == Presence.Out ? Truth.False : here == Presence.NotKnown ? And(truth, Truth.Unknown) : truth;
            if (truth != Truth.False)
            {
                var to = Math.Min(next - 1, Day.End);
                if (WasLetInWithNobody(male, day, strict))
                {
                    AddIn(MobStays.NotKnown, new SpellStretch(day, to, truth, male), stretches, anywhere);
                }

                AddIn(where.On(male, day, strict), new SpellStretch(day, to, truth, male), stretches, anywhere);
                if (where.MorningOf(male, day, strict) is { } morning)
                {
                    AddIn(morning, new SpellStretch(day, to, truth, male), stretches, anywhere);
                }
            }

            day = next;
        }
    }

    private static void AddIn(int mob, SpellStretch stretch, List<SpellStretch>[] stretches, List<SpellStretch> anywhere)
    {
        if (mob == MobStays.NotKnown)
        {
            anywhere.Add(stretch with { State = Truth.Unknown });
        }
        else
        {
            stretches[mob].Add(stretch);
        }
    }

    /// <summary>Whether he runs with his mob on a day, if he is a male and here.</summary>
    private Truth InMob(int male, int day, int mayBeGrown, int isGrown, bool strict)
    {
        var (sure, maybe) = own.Latest(male, day, day, strict, null);
        if (sure == day)
        {
            return Truth.True;
        }

        var byRow = maybe == day ? Truth.Unknown : Truth.False;
        if (where.IsWithout(male, day))
        {
            return byRow;
        }

        var grown = day >= isGrown ? Truth.True : day >= mayBeGrown ? Truth.Unknown : Truth.False;
        grown = And(grown, IsNotTakenOut(male, day, strict));
        return byRow > grown ? byRow : grown;
    }

    /// <summary>Whether he is in by a row of his own, or may be, which stands on a day without a female in his mob, and he has not moved since.</summary>
    private bool WasLetInWithNobody(int male, int day, bool strict)
    {
        var (sure, maybe) = own.Latest(male, day, day, strict, null);
        if (sure != day && maybe != day)
        {
            return false;
        }

        var start = Runs.LastAtMost(_starts, male, day);
        return (start >= _starts.Starts[male] && IsLetInWithNobody(male, _starts.Days[start], day, strict))
            || _mayStart[male].Any(gap => gap.IsLostStart
                ? gap.From <= day && day <= gap.To + 1 && IsLetInWithNobody(male, gap.To + 1, day, strict)
                : gap.From <= day && (gap.To > gap.From ? !where.MovesBetween(male, gap.To + 1, day - 1) : IsLetInWithNobody(male, gap.From, day, strict)));
    }

    private bool IsLetInWithNobody(int male, int start, int day, bool strict)
    {
        if (where.MovesBetween(male, start + 1, day - 1))
        {
            return false;
        }

        var mob = where.On(male, start, strict);
        return mob == MobStays.NotKnown || (mob != where.Blank && !females.Value.AnyIn(mob, start));
    }

    /// <summary>His own row took him out before this day, and he has not moved since: false. He may have: not known.</summary>
    private Truth IsNotTakenOut(int male, int day, bool strict)
    {
        var last = Runs.LastAtMost(_ends, male, day - 1);
        if (last < _ends.Starts[male])
        {
            return Truth.True;
        }

        var taken = _ends.Days[last];
        var start = Runs.LastAtMost(_starts, male, day);
        return (start >= _starts.Starts[male] && _starts.Days[start] >= taken) || where.MovesBetween(male, taken + 1, day) ? Truth.True
            : where.IsKnown(male, taken + 1, day, strict) ? Truth.False
            : Truth.Unknown;
    }

    private int NextEdge(int male, int day, int mayBeGrown, int isGrown)
    {
        var edge = where.NextEdge(male, day);
        edge = mayBeGrown > day ? Math.Min(edge, mayBeGrown) : edge;
        edge = isGrown > day ? Math.Min(edge, isGrown) : edge;
        edge = Math.Min(edge, Math.Min(days.Own.NextEdge(male, spell.From.Id, day), new DayAfterEdges(days.Own, male, spell.Until.Id).Next(day)));
        edge = Math.Min(edge, Math.Min(new SpellEndEdges(own.Endings, male).Next(day), new LostStartEdges(own.Lost, male).Next(day)));
        return edge == int.MaxValue ? Day.End + 1 : edge;
    }

    private int FirstHere(int male)
    {
        var members = _herd.Membership;
        for (var place = members.Starts[male]; place < members.Starts[male + 1]; place++)
        {
            if (members.States[place] != Presence.Out)
            {
                return members.From[place];
            }
        }

        return Day.End + 1;
    }

    private static int GrownFrom(int born, TimeLength age) => born is <= Day.Start or >= Day.End ? born : Day.Number(age.After(Day.Date(born)));

    private static Truth And(Truth a, Truth b) => a < b ? a : b;
}
