namespace Byrelaw.Judging.Spells;

/// <summary>
/// Whether an animal is in a spell by the company of her mob: a bull was put in it, or with one of it, or a grown male is in it. Nobody is by a mob that she
/// surely is not in; where nobody says in which she is, she may be by any.
/// </summary>
internal sealed class MobSpells
{
    private readonly HerdDays _days;
    private readonly Whereabouts _where;
    private readonly int[] _neededFrom;
    private readonly Lines _assumed;
    private readonly Lines _strict;
    private readonly int[] _changes;

    public MobSpells(HerdDays days, Spell spell, OwnSpell own)
    {
        _days = days;
        _where = days.Where;
        _neededFrom = days.Coverage.NeededFrom[spell.From.Id];
        var females = new Lazy<FemalesInMobs>(() => new FemalesInMobs(days.Herd));
        var rows = new SpellsByMobRows(days.Own, spell, own.Endings, females);
        var males = new MalesInMobs(days, _where, own, spell, females);
        var letIn = new FemalesLetIn(days, _where, own, spell);
        _assumed = new Lines(_where.Blank + 1, rows, males, letIn, strict: false);
        _strict = new Lines(_where.Blank + 1, rows, males, letIn, strict: true);
        IsNever = _assumed.Any.IsNever;
        _changes = [.. _assumed.Changes.Concat(_strict.Changes).Distinct().Order()];
    }

    /// <summary>Whether no mob ever has, or may have, such company as far as the records reach.</summary>
    public bool IsNever { get; }

    /// <summary>Lowers or raises the last day on which she surely was in it, and the last on which she may have been, by her mob's.</summary>
    /// <param name="animal">Whose.</param>
    /// <param name="low">The first day looked at.</param>
    /// <param name="high">The last.</param>
    /// <param name="strict">Coverage stops at the known day.</param>
    /// <param name="sure">Raised to the last day on which she surely was.</param>
    /// <param name="maybe">Raised to the last day on which she may have been.</param>
    /// <param name="notes">Where to write down what was found.</param>
    public void Latest(int animal, int low, int high, bool strict, ref int sure, ref int maybe, Notes? notes)
    {
        if (IsNever)
        {
            return;
        }

        var lines = strict ? _strict : _assumed;
        if (lines.Any.IsNever)
        {
            return;
        }

        var day = Math.Max(Math.Max(low, lines.Any.From[0]), _neededFrom[animal]);
        while (day <= high)
        {
            var next = _where.NextEdge(animal, day);
            var to = Math.Min(high, next - 1);
            if (_days.Herd.Membership.At(animal, day) is var here and not Presence.Out)
            {
                Look(lines, animal, _where.On(animal, day, strict), here == Presence.In, day, to, ref sure, ref maybe, notes);
                if (_where.MorningOf(animal, day, strict) is { } morning)
                {
                    Look(lines, animal, morning, here == Presence.In, day, to, ref sure, ref maybe, notes);
                }
            }

            day = next;
        }
    }

    /// <summary>The days on which what is looked at may change, for one animal.</summary>
    public MobSpellEdges Edges(int animal) => new(_where, animal, _changes);

    private void Look(Lines lines, int animal, int mob, bool isHere, int from, int to, ref int sure, ref int maybe, Notes? notes)
    {
        var (own, ownMaybe) = (int.MinValue, int.MinValue);
        var isFemale = _days.Herd.Sexes[animal] == Sex.Female;
        lines.For(mob, isFemale ? -1 : animal).Latest(from, to, ref own, ref ownMaybe);
        if (!isHere)
        {
            (own, ownMaybe) = (int.MinValue, Math.Max(own, ownMaybe));
        }

        sure = Math.Max(sure, own);
        maybe = Math.Max(maybe, ownMaybe);
        if (notes is not null && isFemale && lines.HasOwn(animal))
        {
            // A bull put in with her is told by her own row: for whether she is in the spell it makes no difference, and to leave her out of every day's company takes long.
            (own, ownMaybe) = (int.MinValue, int.MinValue);
            lines.For(mob, animal).Latest(from, to, ref own, ref ownMaybe);
        }

        if (notes is not null && Math.Max(own, ownMaybe) >= from)
        {
            Note(lines, animal, mob, Math.Max(own, ownMaybe), own < ownMaybe, notes);
        }
    }

    /// <summary>Both rows: what brought her into the mob, and what makes its company.</summary>
    private void Note(Lines lines, int animal, int mob, int day, bool isInDoubt, Notes notes)
    {
        var (herd, move) = (_days.Herd, _days.Herd.Vocabulary.MobMove);
        if (mob == MobStays.NotKnown)
        {
            notes.WhichMob(animal, day);
            return;
        }

        if (herd.Mobs.StayAt(animal, day) is var stay and >= 0 && herd.Mobs.Lines[stay] > 0 && herd.Mobs.From[stay] > Day.Start)
        {
            notes.Row(move.Id, herd.Mobs.From[stay], herd.Mobs.Lines[stay], mob < _where.Blank ? herd.Mobs.Names[mob] : null);
        }

        foreach (var one in lines.Stretches[mob].Concat(isInDoubt ? lines.Anywhere : []))
        {
            if (one.From > day || one.To < day || one.Male == animal)
            {
                continue;
            }

            if (one.Male == MalesInMobs.WithoutNumber)
            {
                notes.WhoHasNoNumber();
            }
            else if (one.Male == MalesInMobs.NotListed)
            {
                notes.WhoIsNotListed(one.Line);
            }
            else if (one.Male < 0)
            {
                notes.MobRow(one.Line);
            }
            else if (herd.Sexes[one.Male] == Sex.Female)
            {
                notes.WhoseBull(one.Male);
            }
            else if (one.State == Truth.True)
            {
                notes.Fact(one.Male, "sex", "M");
            }
            else
            {
                notes.WhatRuns(one.Male, _where.On(one.Male, day, strict: false) == MobStays.NotKnown || lines.Anywhere.Contains(one));
            }
        }
    }

    /// <summary>What each mob's company is, day by day.</summary>
    private sealed class Lines
    {
        // Several threads look at animals side by side, each at one for many days before the next: a few places keep them apart.
        private readonly Others?[] _others = new Others?[64];
        private readonly HashSet<int> _own;

        public Lines(int mobs, SpellsByMobRows rows, MalesInMobs males, FemalesLetIn letIn, bool strict)
        {
            Stretches = new List<SpellStretch>[mobs];
            for (var mob = 0; mob < mobs; mob++)
            {
                Stretches[mob] = [];
            }

            rows.AddTo(Stretches, Anywhere, strict);
            males.AddTo(Stretches, Anywhere, strict);
            letIn.AddTo(Stretches, Anywhere, strict);
            var anywhere = CompanyLine.Of(Anywhere);
            OfMob = Array.ConvertAll(Stretches, own => CompanyLine.Of([.. own, .. InDoubt(anywhere)]));
            Any = CompanyLine.SameForAll(OfMob);
            _own = [.. Stretches.SelectMany(own => own).Concat(Anywhere).Select(one => one.Male).Where(animal => animal >= 0)];
        }

        public List<SpellStretch>[] Stretches { get; }

        public List<SpellStretch> Anywhere { get; } = [];

        public CompanyLine[] OfMob { get; }

        /// <summary>For an animal that may be in any mob.</summary>
        public CompanyLine Any { get; }

        /// <summary>Whether an animal makes company herself: she is none of her own.</summary>
        public bool HasOwn(int animal) => _own.Contains(animal);

        /// <summary>The company of a mob; where that is not known, of any. One of unknown sex is no company of its own.</summary>
        public CompanyLine For(int mob, int without)
        {
            if (without < 0)
            {
                return mob == MobStays.NotKnown ? Any : OfMob[mob];
            }

            var place = without % _others.Length;
            if (_others[place] is not { } others || others.Without != without)
            {
                _others[place] = others = OthersThan(without);
            }

            return mob == MobStays.NotKnown ? others.Any : others.OfMob[mob];
        }

        private Others OthersThan(int without)
        {
            var anywhere = CompanyLine.Of(Anywhere.FindAll(one => one.Male != without));
            var ofMob = Array.ConvertAll(Stretches, own => CompanyLine.Of([.. own.FindAll(one => one.Male != without), .. InDoubt(anywhere)]));
            return new Others(without, ofMob, CompanyLine.SameForAll(ofMob));
        }

        public IEnumerable<int> Changes => Stretches.SelectMany(own => own).Concat(Anywhere).SelectMany(one => new[] { one.From, one.To + 1 });

        private sealed record Others(int Without, CompanyLine[] OfMob, CompanyLine Any);

        private static IEnumerable<SpellStretch> InDoubt(CompanyLine line)
        {
            for (var place = 0; place < line.From.Length; place++)
            {
                if (line.States[place] != Truth.False)
                {
                    yield return new SpellStretch(line.From[place], place + 1 < line.From.Length ? line.From[place + 1] - 1 : Day.End, Truth.Unknown);
                }
            }
        }
    }
}

/// <summary>The days on which the company of an animal's mob may change for her.</summary>
internal readonly struct MobSpellEdges(Whereabouts where, int animal, int[] changes) : IEdges
{
    public int Next(int day)
    {
        if (changes.Length == 0)
        {
            return int.MaxValue;
        }

        var place = Runs.LastAtMost(changes, 0, changes.Length - 1, day) + 1;
        return Math.Min(place < changes.Length ? changes[place] : int.MaxValue, where.NextEdge(animal, day));
    }
}
