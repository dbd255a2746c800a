namespace Byrelaw.Judging.Criteria;

/// <summary>Makes conditions ready to be asked. What it makes remembers things, so each thread has its own.</summary>
internal sealed class CriterionCompiler
{
    private readonly HerdDays _days;
    private readonly Rulebook _rulebook;
    private readonly Programme? _programme;
    private readonly int? _calving;
    private readonly DefineCriterion?[] _defines;
    private readonly Dictionary<int, MobResults> _mobResults = [];
    private readonly List<EndedWindow> _ended = [];
    private readonly SaidAlike? _alike;
    private readonly SharedConditions? _shared;

    // Only where a rule passes what is not known does it matter why it is not.
    private readonly Bars? _bars;
    private CriterionCompiler? _forPassing;

    /// <param name="days">What is asked of days.</param>
    /// <param name="rulebook">The rules.</param>
    /// <param name="isShared">Whether all that says the same is one criterion; for a few rules it is quicker not to look for it.</param>
    public CriterionCompiler(HerdDays days, Rulebook rulebook, bool isShared = true)
        : this(days, rulebook, isShared ? new SaidAlike(rulebook) : null, bars: null)
    {
    }

    private CriterionCompiler(HerdDays days, Rulebook rulebook, SaidAlike? alike, Bars? bars)
    {
        (_days, _rulebook) = (days, rulebook);
        _programme = rulebook.Programme;
        _calving = rulebook.Vocabulary.Calving?.Id;
        _bars = bars;
        _defines = new DefineCriterion[rulebook.Defines.Length];
        _alike = alike;
        _shared = alike is null ? null : new SharedConditions(alike);
    }

    /// <summary>The same for rules that pass what is not known.</summary>
    public CriterionCompiler ForPassing => _forPassing ??= new CriterionCompiler(_days, _rulebook, _alike, new Bars(_days, _calving));

    /// <summary>The criterion for a sort of animal; null for everyone.</summary>
    public Criterion? Compile(Audience audience, NamedCondition? named) => audience switch
    {
        Audience.Everyone => null,
        Audience.Named when named is not null => Compile(named),
        Audience.Named => BrokenCriterion.Instance,
        _ => WithBar(new SortCriterion(_days, audience, _calving), bars => bars.OfSort()),
    };

    /// <summary>The criterion for what a safety rule needs: the floor asks much of it again.</summary>
    public Criterion CompileShared(Condition condition) =>
        condition is BrokenCondition ? BrokenCriterion.Instance : _shared?.Of(condition, Compile) ?? Compile(condition);

    /// <summary>The criterion for a condition.</summary>
    public Criterion Compile(Condition condition) => condition is NamedCondition or ListCondition or BrokenCondition || NamesAnUnsetDate(condition)
        ? Whole(condition)
        : WithBar(Whole(condition), bars => bars.Of(condition, WindowsOf(condition)));

    private Criterion WithBar(Criterion asked, Func<Bars, Bar> bar) => _bars is null ? asked : new BarringCriterion(asked, bar(_bars));

    private WindowSet? WindowsOf(Condition condition) => condition switch
    {
        CountCondition count => Compile(count.Windows),
        ApartCondition apart => Compile(apart.Windows),
        MeasuredCondition measured => Compile(measured.Windows),
        TestCondition test => Compile(test.Windows),
        SeriesCondition series => Compile(series.Windows),
        MobMeasuredCondition mob => OfTheMob(mob.Windows),
        MobCountCondition mob => OfTheMob(mob.Windows),
        _ => null,
    };

    private Criterion Whole(Condition condition)
    {
        if (NamesAnUnsetDate(condition))
        {
            return BrokenCriterion.Instance;
        }

        _ended.Clear();
        var asked = OfItsKind(condition);
        return _ended.Count == 0 || condition is ListCondition or NamedCondition ? asked : new EachDayCriterion(_days, condition, (LeafCriterion)asked, [.. _ended]);
    }

    private Criterion OfItsKind(Condition condition) => condition switch
    {
        CountCondition count => new CountCriterion(_days, count, Compile(count.Windows)),
        ApartCondition apart => new ApartCriterion(_days, apart, Compile(apart.Windows)),
        TimeSinceCondition since => new TimeSinceCriterion(_days, since, Anchor(since.Kinds)),
        AgeCondition age => new AgeCriterion(_days, age),
        ParityCondition parity => new ParityCriterion(_days, parity, _calving),
        FactNumberCondition number => new FactNumberCriterion(_days, number),
        FactTextCondition text => new FactTextCriterion(_days, text),
        FactDateCondition date => new FactDateCriterion(_days, date),
        RecordedCondition recorded => new RecordedCriterion(_days, recorded),
        MeasuredCondition measured => new MeasuredCriterion(_days, measured, Compile(measured.Windows)),
        TestCondition test => new TestCriterion(_days, test, Compile(test.Windows)),
        SeriesCondition series => new SeriesCriterion(_days, series, Compile(series.Windows)),
        MobMeasuredCondition mob => new MobMeasuredCriterion(_days, mob, OfTheMob(mob.Windows), ResultsOf(mob.Measure)),
        MobCountCondition mob => new MobCountCriterion(_days, mob, OfTheMob(mob.Windows), ResultsOf(mob.Measure)),
        InMobCondition mob => new InMobCriterion(_days, mob),
        SpellCondition spell => new SpellCriterion(_days, spell, Compile(spell.Windows)),
        StandingCondition standing => new StandingCriterion(
            _days, standing, new HerdmateDays(_days, standing, _calving)),
        NamedCondition { Not: true } named => new NotCriterion(Define(named.Index)),
        NamedCondition named => Define(named.Index),
        ListCondition { Kind: ListKind.NoneOf } list => new NotCriterion(new ListCriterion(Compile(list.Items), list.AtLeast)),
        ListCondition list => new ListCriterion(Compile(list.Items), list.AtLeast),
        BrokenCondition => BrokenCriterion.Instance,
        _ => throw MissingKind.Of(condition, nameof(CriterionCompiler)),
    };

    /// <summary>A define, made ready when it is first spoken of; one for all that say the same.</summary>
    private DefineCriterion Define(int index)
    {
        var place = _alike?.Define(index) ?? index;
        var define = _rulebook.Defines[place];
        return _defines[place] ??= new DefineCriterion(define.Name, define.IsBroken ? BrokenCriterion.Instance : Compile(define.Condition));
    }

    /// <summary>A date that this programme does not set: the condition can be read, but not judged.</summary>
    private bool NamesAnUnsetDate(Condition condition) => new ConditionParts(condition).Dates.Any(date => DayOf(date) is null);

    /// <summary>A named date is the programme's: where a plan moves the programme, it moves in the rules too.</summary>
    private LocalDate? DayOf(DateReference date) => (date.Name is { } name ? _programme?.Date(name) : null) ?? date.Value;

    private Criterion[] Compile(ImmutableArray<Condition> items) => [.. items.Select(Compile)];

    private WindowSet Compile(ImmutableArray<Window> windows) => new(_days, [.. windows.Select(Compile)]);

    /// <summary>Nothing of hers is from before her birth; of her mob there may be.</summary>
    private WindowSet OfTheMob(ImmutableArray<Window> windows) =>
        new(_days, [.. windows.Select(window => window is SinceBirth ? new BirthWindow(_days) : Compile(window))]);

    private WindowReader Compile(Window window) => window switch
    {
        InTheLast last => new PlainWindow(lowMoves: new Reckoning(last.Length)),
        AtLeastAgo ago => new PlainWindow(highMoves: new Reckoning(ago.Near)),
        BetweenAgo ago => new PlainWindow(lowMoves: new Reckoning(ago.Far), highMoves: new Reckoning(ago.Near)),
        BeforeDate before when DayOf(before.Date) is { } date => new PlainWindow(
            low: new Reckoning(before.Length).FirstReaching(Day.Number(date)), highStands: Day.Number(date)),
        SinceDate since when DayOf(since.Date) is { } date => new PlainWindow(low: Day.Number(date)),
        SinceLast since => new AnchoredWindow(Anchor(since.Kinds), null),
        FromAfterSpell after => new AfterSpellWindow(_days, after.Spell, new Reckoning(after.Wait)),
        FromAfterLast after => new AnchoredWindow(Anchor(after.Kinds), new Reckoning(after.Wait)),
        BeforeDay { Day: { Date: { } named } } when DayOf(named) is { } date => new PlainWindow(highStands: Day.Number(date) - 1),
        DaysAfter { Day: { Date: { } named } } after when DayOf(named) is { } date => new PlainWindow(
            low: Day.Number(date), highStands: new Reckoning(after.Length).After(Day.Number(date))),
        BeforeDay before => Ended(before.Day.Last, null),
        DaysAfter after => Ended(after.Day.Last, new Reckoning(after.Length)),
        SinceBirth or Ever => new PlainWindow(),
        _ => throw MissingKind.Of(window, nameof(CriterionCompiler)),
    };

    private EndedWindow Ended(ImmutableArray<Kind> last, Reckoning? length)
    {
        var window = new EndedWindow(Anchor(last), length);
        _ended.Add(window);
        return window;
    }

    private Anchor Anchor(ImmutableArray<Kind> kinds) => new(_days, [.. kinds.Select(kind => kind.Id)]);

    private MobResults ResultsOf(MeasureKind measure)
    {
        if (!_mobResults.TryGetValue(measure.Id, out var results))
        {
            _mobResults[measure.Id] = results = new MobResults(_days.Herd, measure.Id);
        }

        return results;
    }
}
