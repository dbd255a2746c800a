namespace Byrelaw.Judging.Tests.Reference;

/// <summary>
/// Whether she was in a spell on a day: by rows of her own, or by the company of her mob. "`bull in` of `mob:River` starts the spell for
/// the mob. Who enters while it runs starts it that day, who leaves ends it that day. Mob or its bull not known: nor is her spell."
/// </summary>
public sealed class SpellReference
{
    private readonly FarmAsRead _farm;
    private readonly CoverageReference _coverage;
    private readonly OwnSpellReference _own;
    private readonly MobCompanyReference _company;
    private readonly WhereReference _where;
    private readonly Dictionary<(int Animal, string Spell, bool Strict), Truth[]> _known = [];

    public SpellReference(FarmAsRead farm, CoverageReference coverage, RecordKeeping? keeping, Vocabulary vocabulary)
    {
        _farm = farm;
        _coverage = coverage;

        // "A mob's or herd's `bull out` is also an entry of each member's, its `bull in` is not": whose it is, then, is no doubt of hers.
        var starts = vocabulary.Spells.Select(spell => spell.From.Id).ToHashSet();
        var own = new CoverageReference(farm, keeping, coverage.Dawn, coverage.Dusk, calving: null, row => row.LostTo is not null || (row.OfGroup && row.Kind is { } kind && starts.Contains(kind.Id)));
        var endings = new SpellEndsReference(farm, keeping);
        _where = new WhereReference(farm, coverage, keeping, vocabulary.MobMove);
        _own = new OwnSpellReference(farm, own, endings);
        _company = new MobCompanyReference(farm, coverage, keeping, endings, _own, _where);
    }

    /// <summary>On the day of judging itself.</summary>
    public Truth At(Spell spell, Moment moment) => Days(spell, moment)[moment.Day - _coverage.Dawn];

    /// <summary>On any day from one to another: the Kleene "or" of all of them.</summary>
    public Truth OnAny(Spell spell, Moment moment, int from, int to)
    {
        var days = Days(spell, moment);
        var any = Truth.False;
        for (var day = Math.Max(from, _coverage.Dawn); day <= to; day++)
        {
            any = Kleene.Or(any, days[day - _coverage.Dawn]);
        }

        return any;
    }

    /// <summary>Each day that may have been the last on which she was in it, as seen on the day of judging; null stands for never: "latest day that is
    /// surely one, and every later one that may be".</summary>
    public IEnumerable<int?> Last(Spell spell, Moment moment)
    {
        var days = Days(spell, moment);
        int? sure = null;
        var maybe = new List<int?>();
        for (var day = _coverage.Dawn; day <= moment.Day; day++)
        {
            switch (days[day - _coverage.Dawn])
            {
                case Truth.True:
                    sure = day;
                    maybe.Clear();
                    break;
                case Truth.Unknown:
                    maybe.Add(day);
                    break;
            }
        }

        return maybe.Prepend(sure);
    }

    private Truth[] Days(Spell spell, Moment moment)
    {
        var key = (moment.Animal, spell.Name, moment.Strict);
        if (!_known.TryGetValue(key, out var days))
        {
            _known[key] = days = new Truth[_coverage.Dusk - _coverage.Dawn + 1];
            var company = _company.Of(spell, _farm.Animals[moment.Animal].IsFemale == true ? -1 : moment.Animal, moment.Strict);
            for (var day = _coverage.Dawn; day <= _coverage.Dusk; day++)
            {
                days[day - _coverage.Dawn] = Kleene.Or(_own.On(spell, moment.Animal, day, moment.Strict), OfHerMob(company, spell, moment.Animal, day, moment.Strict));
            }
        }

        return days;
    }

    /// <summary>Whether it would be known of her own spells on all days from one to another, did these say which kinds cover which days.</summary>
    public bool IsKnown(Spell spell, int animal, int from, int to, Func<Kind, int, bool> covers, Predicate<Unread> settles) => _own.IsKnown(spell, animal, from, to, covers, settles);

    /// <summary>No calf too young for a bull runs with one. Where her mob is not known, she may be in any: the same for all, or not known.</summary>
    private Truth OfHerMob(IReadOnlyDictionary<string, Truth[]> company, Spell spell, int animal, int day, bool strict)
    {
        if (day < CoverageReference.NeededFrom(_farm.Animals[animal], spell.From))
        {
            return Truth.False;
        }

        var any = Truth.False;
        foreach (var mob in _where.MobsOn(animal, day, strict))
        {
            var truth = mob is null
                ? Kleene.SameForAll(company.Values.Select(one => one[day - _coverage.Dawn]))
                : company[mob][day - _coverage.Dawn];
            any = Kleene.Or(any, truth);
        }

        return Kleene.And(_farm.Presence.At(animal, day), any);
    }
}
