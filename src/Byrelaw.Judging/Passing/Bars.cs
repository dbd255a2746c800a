namespace Byrelaw.Judging.Passing;

/// <summary>Finds for each condition what would bar its passing.</summary>
internal sealed class Bars
{
    private readonly HerdDays _days;
    private readonly BadRecords _bad;
    private readonly int? _calving;

    public Bars(HerdDays days, int? calving)
    {
        _days = days;
        _calving = calving;
        _bad = new BadRecords(days);
    }

    /// <summary>Of whether she is a cow or a heifer.</summary>
    public Bar OfSort() => new ParityBar(_days, _bad, _calving);

    /// <summary>Of one condition; where a window of it runs from the end of a spell, a bull may be anywhere.</summary>
    /// <param name="condition">Neither a list nor a name.</param>
    /// <param name="windows">Its windows; null for none.</param>
    public Bar Of(Condition condition, WindowSet? windows)
    {
        var own = OfItsParts(condition, windows);
        return WindowsOf(condition).OfType<FromAfterSpell>().Any(after => OfAnyBull(after.Spell)) ? new HerdBar(true, own) : own;
    }

    private Bar OfItsParts(Condition condition, WindowSet? windows)
    {
        var parts = new ConditionParts(condition);
        int[] kinds = [.. parts.Kinds.Select(kind => kind.Id).Distinct()];
        int[] facts = [.. parts.Facts.Select(fact => fact.Id).Distinct()];
        return condition switch
        {
            AgeCondition => new AgeBar(_days, _bad),
            ParityCondition => OfSort(),
            TimeSinceCondition => new OwnBar(_days, _bad, [], false, [kinds], facts, null),
            CountCondition count => new CountBar(_days, count, windows!, new OwnBar(_days, _bad, kinds, true, AnchorsOf(count.Windows), facts, windows)),
            ApartCondition apart => new OwnBar(_days, _bad, kinds, true, AnchorsOf(apart.Windows), facts, windows),
            SpellCondition spell => new HerdBar(OfAnyBull(spell.Spell), new OwnBar(_days, _bad, [], false, AnchorsOf(spell.Windows), facts, null)),
            InMobCondition mob => OfItsMob(mob, new OwnBar(_days, _bad, [], false, [], facts, null)),
            StandingCondition => new HerdBar(OfAnyStanding(facts), new OwnBar(_days, _bad, [], false, [], facts, null)),
            MobMeasuredCondition mob => OfTheMob(mob.Measure, mob.Windows, facts, windows!),
            MobCountCondition mob => OfTheMob(mob.Measure, mob.Windows, facts, windows!),
            MeasuredCondition measured => new OwnBar(_days, _bad, kinds, false, AnchorsOf(measured.Windows), facts, windows),
            TestCondition test => new OwnBar(_days, _bad, kinds, false, AnchorsOf(test.Windows), facts, windows),
            SeriesCondition series => new OwnBar(_days, _bad, kinds, false, AnchorsOf(series.Windows), facts, windows),
            FactTextCondition { Doubted.IsEmpty: false } fact => new ValueBar(_days, fact, new OwnBar(_days, _bad, [], false, [], facts, null)),
            _ => new OwnBar(_days, _bad, [], false, [], facts, null),
        };
    }

    private static ImmutableArray<Window> WindowsOf(Condition condition) => condition switch
    {
        CountCondition count => count.Windows,
        ApartCondition apart => apart.Windows,
        MeasuredCondition measured => measured.Windows,
        TestCondition test => test.Windows,
        SeriesCondition series => series.Windows,
        MobMeasuredCondition mob => mob.Windows,
        MobCountCondition mob => mob.Windows,
        SpellCondition spell => spell.Windows,
        _ => [],
    };

    /// <summary>Nor passes a mob that no record names: it may be a slip of the rule's.</summary>
    private HerdBar OfItsMob(InMobCondition condition, Bar own)
    {
        var move = _days.Herd.Vocabulary.MobMove.Id;
        return new HerdBar(HasGap(gap => gap.Kind < 0 || gap.Kind == move) || condition.Mobs.Any(mob => _days.Herd.Mobs.Find(mob) < 0), new StayBar(_days, own));
    }

    private HerdBar OfTheMob(MeasureKind measure, ImmutableArray<Window> windows, int[] facts, WindowSet own)
    {
        var move = _days.Herd.Vocabulary.MobMove.Id;
        return new HerdBar(
            HasGap(gap => gap.Kind < 0 || gap.Kind == measure.Id || gap.Kind == move),
            new MobBar(_days, measure.Id, own, new OwnBar(_days, _bad, [], false, AnchorsOf(windows), facts, null)));
    }

    /// <summary>Whether a bull may be anywhere for something that cannot be relied on, or is on record of a mob or the herd, or as a male.</summary>
    private bool OfAnyBull(Spell spell)
    {
        var herd = _days.Herd;
        int[] kinds = [spell.From.Id, spell.Until.Id, herd.Vocabulary.MobMove.Id];
        return HasGap(gap => gap.Kind < 0 || kinds.Contains(gap.Kind)) || herd.AnimalsWithoutNumber > 0
            || Array.Exists(herd.Sexes, sex => sex is Sex.Male or Sex.NotKnown)
            || Array.Exists(herd.MobRows.Spells, row => kinds.Contains(row.Kind))
            || kinds.Any(_bad.Touch);
    }

    private bool OfAnyStanding(int[] facts)
    {
        var herd = _days.Herd;
        return HasGap(gap => gap.Kind < 0 || gap.Kind == _calving || herd.Vocabulary.ById[gap.Kind] is EventKind { Effect: not HerdEffect.None })
            || herd.AnimalsWithoutNumber > 0 || Array.Exists(herd.Sexes, sex => sex == Sex.NotKnown)
            || Array.Exists(facts, fact => Array.Exists(herd.Facts[fact].States, state => state == FactState.Unreadable))
            || Enumerable.Range(0, herd.Count).Any(animal => _bad.HasUnreadableBirth(animal) || herd.RecordedParity[animal] < -1 || herd.DayOfParity(animal) <= Day.Start)
            || (_calving is { } calving && _bad.Touch(calving));
    }

    private bool HasGap(Predicate<Gap> which) => Array.Exists(_days.Coverage.Gaps, which);

    private static int[][] AnchorsOf(ImmutableArray<Window> windows) =>
    [
        .. windows.Select(window => window switch { SinceLast since => since.Kinds, FromAfterLast after => after.Kinds, BeforeDay before => before.Day.Last, DaysAfter after => after.Day.Last, _ => [] })
            .Where(kinds => !kinds.IsEmpty).Select(kinds => kinds.Select(kind => kind.Id).ToArray()),
    ];
}
