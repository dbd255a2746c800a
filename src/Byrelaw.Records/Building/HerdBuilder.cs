using Byrelaw.Records.Sources;

namespace Byrelaw.Records.Building;

/// <summary>Puts rows that could be read, and gaps for those that could not, together into the parts of a herd.</summary>
internal sealed class HerdBuilder
{
    private readonly Vocabulary _vocabulary;
    private readonly AnimalRow[] _animals;
    private readonly EventStage[] _stages;
    private readonly GapTable _gaps;
    private readonly ImpossibleDates _impossible;
    private readonly int _supposedAfter;
    private readonly IReadOnlySet<int> _ofSheets;
    private readonly EventStage _expanded;
    private readonly List<GroupRow> _groups;
    private readonly WhoIsWhere _where;
    private readonly int _mobMove;
    private readonly bool[] _isOfSpell;

    // One calf that is found in a mob is one cow's: whose, such a row does not say.
    private readonly bool[] _endsPregnancy;

    /// <summary>Takes what was read. Rows with impossible dates are taken out at once.</summary>
    /// <param name="vocabulary">The words.</param>
    /// <param name="animals">In the order of the herd.</param>
    /// <param name="stages">What each thread has read.</param>
    /// <param name="gaps">Gaps that are known beside those of the stages.</param>
    /// <param name="knownDay">The day the records reach.</param>
    /// <param name="doubles">Animals that may be one.</param>
    /// <param name="supposedAfter">Rows behind this line are supposed.</param>
    /// <param name="ofSheets">Lines of rows that are of sheets: they move no promise, and may lie after what the records reach.</param>
    public HerdBuilder(Vocabulary vocabulary, AnimalRow[] animals, EventStage[] stages, IEnumerable<Gap> gaps, int knownDay, Doubles doubles, int supposedAfter, IReadOnlySet<int> ofSheets)
    {
        _supposedAfter = supposedAfter;
        _ofSheets = ofSheets;
        _vocabulary = vocabulary;
        _animals = animals;
        _stages = stages;
        _mobMove = vocabulary.MobMove.Id;
        _isOfSpell = new bool[vocabulary.ById.Length];
        _endsPregnancy = Array.ConvertAll(vocabulary.Kinds.ToArray(), kind => kind == vocabulary.Calving || NameFolding.Fold(kind.Name) == "abortion");
        foreach (var spell in vocabulary.Spells)
        {
            _isOfSpell[spell.From.Id] = _isOfSpell[spell.Until.Id] = true;
        }

        _expanded = new EventStage(vocabulary);
        Details = new EntryDetails([.. stages.SelectMany(stage => stage.Details.All())]);
        _impossible = new ImpossibleDates(knownDay, animals, stages.Select(stage => stage.LastLine).DefaultIfEmpty(int.MaxValue).Min(), supposedAfter, ofSheets);
        _gaps = new GapTable(knownDay, animals, doubles, ofSheets);
        _where = new WhoIsWhere(vocabulary, animals, stages, _expanded, _gaps);
        KnownDay = knownDay;
        TakeOutImpossible();
        Wrong = WrongAnimals.TakenOut(vocabulary, animals, stages, out var mayBeBack);
        _groups = _impossible.TakeOut(stages.SelectMany(stage => stage.Groups));
        _gaps.Add(gaps);
        _gaps.Add(stages.SelectMany(stage => stage.Gaps));
        _gaps.Add(_impossible.Found.Select(row => row.Gap));
        _gaps.Add(Wrong.Select(row => new Gap(-1, row.Kind, row.Day, row.Day, row.Line)));
        _gaps.Add(mayBeBack);
        foreach (var stage in stages)
        {
            _gaps.AddDoubles(stage, Enumerable.Range(0, vocabulary.Kinds.Length));
            _gaps.AddDoubles(_mobMove, stage.Moves);
        }
    }

    /// <summary>The day the records reach.</summary>
    public int KnownDay { get; }

    /// <summary>What more is on record of entries.</summary>
    public EntryDetails Details { get; }

    /// <summary>Rows whose date cannot be.</summary>
    public IReadOnlyList<ImpossibleRow> Impossible => _impossible.Found;

    /// <summary>Rows of animals that they cannot be about.</summary>
    public IReadOnlyList<WrongAnimal> Wrong { get; }

    /// <summary>Calvings that come too soon after another.</summary>
    public IReadOnlyList<RowInDoubt> CalvedAgainSoon { get; private set; } = [];

    /// <summary>Rows that end what never began, though the farm says that it writes down what begins it.</summary>
    public IReadOnlyList<RowInDoubt> EndsWithoutStart { get; private set; } = [];

    /// <summary>Samples of mobs that stand there twice: those that are passed over.</summary>
    public List<GroupRow> SameSample { get; } = [];

    /// <summary>Rows about a mob that no animal is ever in.</summary>
    public List<GroupRow> OfUnknownMob => _where.OfUnknownMob;

    /// <summary>Rows that alone name a mob, whose name may be a slip for another's.</summary>
    public List<SlippedMob> SlippedMobs => _where.Slipped;

    /// <summary>Who is in which mob.</summary>
    public MobStays Mobs => _where.Mobs;

    /// <summary>Who is in the herd.</summary>
    public Membership Membership => _where.Membership;

    /// <summary>By kind id.</summary>
    public KindRun[] Runs { get; private set; } = [];

    /// <summary>By kind id.</summary>
    public MobRun?[] MobRuns { get; private set; } = [];

    /// <summary>By kind id.</summary>
    public GroupRun?[] GroupRuns { get; private set; } = [];

    /// <summary>What sheets say of last entries.</summary>
    public ImmutableArray<HerLast> Last { get; init; } = [];

    /// <summary>As <see cref="Herd.OwnRuns"/>.</summary>
    public KindRun?[] OwnRuns { get; private set; } = [];

    /// <summary>What begins and ends a mob's spells, and moves mobs.</summary>
    public MobRows MobRows { get; private set; } = MobRows.None;

    /// <summary>What may be taken as complete.</summary>
    public Coverage Coverage { get; private set; } = null!;

    /// <summary>Takes what else is in doubt, before the parts are built.</summary>
    public void Doubt(IEnumerable<Gap> gaps) => _gaps.Add(gaps);

    /// <summary>Whether the name of a mob is an animal's number; a paddock has a short one too.</summary>
    private static bool IsNumber(string name, AnimalPlaces places) => (name.Length > 3 || !name.All(char.IsAsciiDigit)) && places.TryFind(Encoding.UTF8.GetBytes(name), out _);

    /// <summary>Builds all parts, each from those before it.</summary>
    /// <param name="mobNames">In the order they were met.</param>
    /// <param name="keeping">What the farm says is complete.</param>
    /// <param name="blanks">What blank cells of details mean.</param>
    /// <param name="hasColumn">Whether there is a column for a detail.</param>
    /// <param name="room">Gives memory back between the steps.</param>
    /// <param name="places">Finds animals by their numbers.</param>
    public void Build(IReadOnlyList<string> mobNames, RecordKeeping? keeping, ImmutableArray<BlankOf> blanks, Func<Kind, int, bool> hasColumn, Room room, AnimalPlaces places)
    {
        Details.Fill(blanks, hasColumn);
        var runs = new RunsBuilder(_vocabulary, _animals.Length, _stages, _expanded, Details);
        List<GroupRow> groups = [];
        Parallel.Invoke(
            () => groups = _where.Build(mobNames, _groups, name => IsNumber(name, places)),
            () => runs.Build(kind => kind is not EventKind, _isOfSpell));
        room.Make();
        groups = SameSamples.Once(groups, _vocabulary, SameSample);
        ExpandEvents(groups, MobKept.Of(_vocabulary, keeping, KnownDay, _where.Kept, Membership, _stages, _groups));
        CalvedAgainSoon = CalvingsTooNear.TakenOut(_vocabulary, _animals, [.. _stages, _expanded], _gaps, groups.Select(row => row.Line).ToHashSet());
        MobRows = MobRowsBuilder.Build(groups, _where.MovesOfMobs, [.. _where.Strangers.Select(row => row.Day > KnownDay ? row with { Day = Day.Start } : row)], _isOfSpell);
        runs.Build(kind => kind is EventKind, _isOfSpell);
        _gaps.Add(runs.Doubts);
        (Runs, OwnRuns) = (runs.Runs, runs.OwnRuns);
        room.Make();
        MobRuns = [.. _vocabulary.ById.Select(kind => kind is MeasureKind ? KindRuns.OfMobs(kind, Mobs.Names.Length, FilteredRuns.OfMobs(kind, groups, Details)) : null)];
        GroupRuns = [.. _vocabulary.ById.Select(kind => KindRuns.OfGroups(kind, kind is EventKind ? [] : FilteredRuns.OfMobs(kind, groups, Details)))];
        var lost = new LostStarts(_vocabulary, this, CoverageBuilder.NeededFrom(_vocabulary, _animals), _gaps.Gaps).Find();
        Coverage = CoverageBuilder.Build(_vocabulary, keeping, _animals, _where.Kept.Joined, _where.Kept.Left, KnownDay, KindReach.Of(_vocabulary, keeping, KnownDay, Runs, _groups.Except(OfUnknownMob), _supposedAfter, _ofSheets), [.. _gaps.Gaps, .. lost.Gaps],
            Last.IsEmpty ? null : new KeptSinceLast(Last, places, Runs));
        EndsWithoutStart = [.. lost.Rows.Where(row => Coverage.Since[row.Kind] <= row.Row.Day).Select(row => row.Row)];
    }

    private void TakeOutImpossible() => Parallel.For(0, _vocabulary.Kinds.Length, kind =>
    {
        foreach (var stage in _stages)
        {
            _impossible.TakeOut(kind, stage.Events[kind]);
            _impossible.TakeOut(kind, stage.Tests[kind]);
            _impossible.TakeOut(kind, stage.Measures[kind]);
            if (kind == _mobMove)
            {
                _impossible.TakeOut(kind, stage.Moves);
            }
        }
    });

    private void ExpandEvents(List<GroupRow> groups, MobKept moves)
    {
        var doubts = new List<Gap>();
        GroupEvents.Expand(
            groups.Where(row => _vocabulary.Kinds[row.Kind] is EventKind), Mobs,
            (animal, row) => Membership.At(animal, row.Day),
            moves,
            (animal, row) =>
            {
                if (_endsPregnancy[row.Kind])
                {
                    doubts.Add(new Gap(animal, row.Kind, row.Day, row.Day, row.Line));
                }
                else
                {
                    _expanded.Events[row.Kind].Add(new Staged<Nothing>(animal, row.Day, row.Line, default));
                }
            },
            doubts.Add);
        _gaps.Add(doubts);
        _gaps.AddDoubles(_expanded, _vocabulary.ById.Where(kind => kind is not EventKind { Effect: not HerdEffect.None }).Select(kind => kind.Id));
    }
}
