namespace Byrelaw.Records.Building;

/// <summary>Puts rows that could be read, and gaps for those that could not, together into the parts of a herd.</summary>
internal sealed class HerdBuilder
{
    private readonly Vocabulary _vocabulary;
    private readonly AnimalRow[] _animals;
    private readonly EventStage[] _stages;
    private readonly HerdEffect[] _effects;
    private readonly GapTable _gaps;
    private readonly ImpossibleDates _impossible;
    private readonly EventStage _expanded;
    private readonly List<GroupRow> _groups;
    private GroupRow[] _groupMoves = [];
    private readonly int _mobMove;
    private readonly bool[] _isOfSpell;

    /// <summary>Takes what was read. Rows with impossible dates are taken out at once.</summary>
    /// <param name="vocabulary">The words.</param>
    /// <param name="animals">In the order of the herd.</param>
    /// <param name="stages">What each thread has read.</param>
    /// <param name="gaps">Gaps that are known beside those of the stages.</param>
    /// <param name="knownDay">The day the records reach.</param>
    /// <param name="doubles">Animals that may be one.</param>
    public HerdBuilder(Vocabulary vocabulary, AnimalRow[] animals, EventStage[] stages, IEnumerable<Gap> gaps, int knownDay, Doubles doubles)
    {
        _vocabulary = vocabulary;
        _animals = animals;
        _stages = stages;
        _mobMove = vocabulary.MobMove.Id;
        _isOfSpell = new bool[vocabulary.ById.Length];
        foreach (var spell in vocabulary.Spells)
        {
            _isOfSpell[spell.From.Id] = _isOfSpell[spell.Until.Id] = true;
        }

        _effects = [.. vocabulary.ById.Select(kind => (kind as EventKind)?.Effect ?? HerdEffect.None)];
        _expanded = new EventStage(vocabulary);
        Details = new EntryDetails([.. stages.SelectMany(stage => stage.Details.All())]);
        _impossible = new ImpossibleDates(knownDay, animals, stages.Select(stage => stage.LastLine).DefaultIfEmpty(int.MaxValue).Min());
        _gaps = new GapTable(knownDay, animals, doubles);
        KnownDay = knownDay;
        TakeOutImpossible();
        Wrong = WrongAnimals.TakenOut(vocabulary, animals, stages);
        _groups = _impossible.TakeOut(stages.SelectMany(stage => stage.Groups));
        _gaps.Add(gaps);
        _gaps.Add(stages.SelectMany(stage => stage.Gaps));
        _gaps.Add(_impossible.Found.Select(row => row.Gap));
        _gaps.Add(Wrong.Select(row => new Gap(-1, row.Kind, row.Day, row.Day, row.Line)));
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

    /// <summary>Samples of mobs that stand there twice: those that are passed over.</summary>
    public List<GroupRow> SameSample { get; } = [];

    /// <summary>Rows about a mob that no animal is ever in.</summary>
    public List<GroupRow> OfUnknownMob { get; } = [];

    /// <summary>Who is in which mob.</summary>
    public MobStays Mobs { get; private set; } = null!;

    /// <summary>Who is in the herd.</summary>
    public Membership Membership { get; private set; } = null!;

    /// <summary>By kind id.</summary>
    public KindRun[] Runs { get; private set; } = [];

    /// <summary>By kind id.</summary>
    public MobRun?[] MobRuns { get; private set; } = [];

    /// <summary>By kind id.</summary>
    public GroupRun?[] GroupRuns { get; private set; } = [];

    /// <summary>As <see cref="Herd.OwnRuns"/>.</summary>
    public KindRun?[] OwnRuns { get; private set; } = [];

    /// <summary>What begins and ends a mob's spells, and moves mobs.</summary>
    public MobRows MobRows { get; private set; } = MobRows.None;

    /// <summary>What may be taken as complete.</summary>
    public Coverage Coverage { get; private set; } = null!;

    /// <summary>Builds all parts, each from those before it.</summary>
    /// <param name="mobNames">In the order they were met.</param>
    /// <param name="keeping">What the farm says is complete.</param>
    /// <param name="room">Gives memory back between the steps.</param>
    public void Build(IReadOnlyList<string> mobNames, RecordKeeping? keeping, Room room)
    {
        Runs = new KindRun[_vocabulary.ById.Length];
        OwnRuns = new KindRun?[_vocabulary.ById.Length];
        MembershipBuilder membership = null!;
        List<GroupRow> groups = [];
        Parallel.Invoke(
            () => (membership, groups) = BuildMembership(mobNames),
            () => BuildRuns(kind => kind is not EventKind));
        room.Make();
        groups = SameSamples.Once(groups, _vocabulary, SameSample);
        ExpandEvents(groups, MobKept.Of(_vocabulary, keeping, KnownDay, membership, Membership, _stages, _groups));
        MobRows = MobRowsBuilder.Of(groups, _groupMoves, _isOfSpell);
        BuildRuns(kind => kind is EventKind);
        room.Make();
        MobRuns = [.. _vocabulary.ById.Select(kind => kind is MeasureKind ? KindRuns.OfMobs(kind, Mobs.Names.Length, FilteredRuns.OfMobs(kind, groups, Details)) : null)];
        GroupRuns = [.. _vocabulary.ById.Select(kind => KindRuns.OfGroups(kind, kind is EventKind ? [] : FilteredRuns.OfMobs(kind, groups, Details)))];
        Coverage = CoverageBuilder.Build(_vocabulary, keeping, _animals, membership.Joined, membership.Left, KnownDay, KindReach.Of(_vocabulary, keeping, KnownDay, Runs, _groups.Except(OfUnknownMob)), _gaps.Gaps);
    }

    /// <summary>Works out who is in which mob and who is in the herd. What is left are the rows about known mobs that are about neither.</summary>
    private (MembershipBuilder Membership, List<GroupRow> Groups) BuildMembership(IReadOnlyList<string> mobNames)
    {
        var ownMoves = SortedRun<int>.Of(_animals.Length, [.. _stages.Select(stage => stage.Moves)]);
        var (numbering, rows) = NumberMobs(mobNames, ownMoves);
        ownMoves = ownMoves with { Results = Array.ConvertAll(ownMoves.Results, numbering.Of) };
        var ownRows = StructuralRows();
        bool[] forGood = [.. _vocabulary.Kinds.Select(kind => kind is EventKind { IsForGood: true })];
        var membership = new MembershipBuilder(_animals, ownRows, _effects, forGood, _gaps.Gaps);
        Membership = membership.Build();
        var known = _gaps.Gaps.Count;
        var groups = ExpandMoves(rows, numbering.Names, ownMoves, Membership);
        var rest = ExpandJoiningAndLeaving(groups, Membership);
        if (rest.Count < groups.Count || _gaps.Gaps.Count > known)
        {
            membership = new MembershipBuilder(_animals, StructuralRows(), _effects, forGood, _gaps.Gaps);
            Membership = membership.Build();
        }

        return (membership, rest);
    }

    /// <summary>Numbers the mobs, in the cells of animals too. A row about a mob that nothing else names may be about anyone, before it is asked
    /// who is in the herd.</summary>
    /// <returns>With the rows about known mobs and the herd.</returns>
    private (MobNumbering Numbering, List<GroupRow> Rows) NumberMobs(IReadOnlyList<string> mobNames, SortedRun<int> ownMoves)
    {
        var targets = _groups.Where(row => row.Kind == _mobMove).Select(row => row.Target);
        var numbering = new MobNumbering(mobNames, _animals, ownMoves.Results.Concat(targets));
        var known = new List<GroupRow>();
        foreach (var row in _groups)
        {
            if (numbering.Of(row) is { } numbered)
            {
                known.Add(numbered);
            }
            else
            {
                OfUnknownMob.Add(row);
                _gaps.Add([new Gap(-1, row.Kind, row.Day, row.Day, row.Line)]);
            }
        }

        numbering.Number(_animals);
        Array.ForEach(_stages, stage => numbering.Number(stage.Moves));
        return (numbering, known);
    }

    private void BuildRuns(Func<Kind, bool> which)
    {
        Kind[] kinds = [.. _vocabulary.Kinds.Where(which)];
        Parallel.For(0, kinds.Length, i =>
        {
            Runs[kinds[i].Id] = KindRuns.Of(kinds[i], _animals.Length, [.. _stages, _expanded]);
            if (_isOfSpell[kinds[i].Id] && _expanded.Events[kinds[i].Id].Count > 0)
            {
                OwnRuns[kinds[i].Id] = KindRuns.Of(kinds[i], _animals.Length, _stages);
            }

            BuildFiltered(kinds[i]);
            Array.ForEach(_stages, stage => stage.LetGo(kinds[i].Id));
        });
    }

    /// <summary>Each kind with a filter is entries of this one; what may or may not be one of its entries is in doubt.</summary>
    private void BuildFiltered(Kind kind)
    {
        foreach (var filtered in _vocabulary.Filtered)
        {
            if (filtered.Filter!.Of.Id == kind.Id)
            {
                var doubts = new List<Gap>();
                Runs[filtered.Id] = FilteredRuns.Of(filtered, _animals.Length, [.. _stages, _expanded], Details, doubts);
                lock (_gaps)
                {
                    _gaps.Add(doubts);
                }
            }
        }
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

    /// <summary>Rows of joining and leaving kinds in one run; the result is the kind's id.</summary>
    private SortedRun<int> StructuralRows()
    {
        var rows = new ChunkedList<Staged<int>>();
        for (var kind = 0; kind < _effects.Length; kind++)
        {
            if (_effects[kind] == HerdEffect.None)
            {
                continue;
            }

            foreach (var part in EventsOf(kind))
            {
                for (var chunk = 0; chunk < part.ChunkCount; chunk++)
                {
                    foreach (ref var row in part.Chunk(chunk))
                    {
                        rows.Add(new Staged<int>(row.Animal, row.Day, row.Line, kind));
                    }
                }
            }
        }

        return SortedRun<int>.Of(_animals.Length, [rows]);
    }

    /// <summary>Works out who is in which mob. What is left are the rows that are no moves.</summary>
    private List<GroupRow> ExpandMoves(List<GroupRow> rows, string[] mobNames, SortedRun<int> ownMoves, Membership presence)
    {
        bool IsMove(int kind) => kind == _mobMove;
        _groupMoves = [.. rows.Where(row => IsMove(row.Kind))];
        var moves = new GroupMoves(_animals, ownMoves, new GapIndex(_gaps.Gaps, IsMove), presence);
        var allMoves = ownMoves;
        if (_groupMoves.Length > 0)
        {
            moves.Expand(_groupMoves);
            _gaps.Add(moves.Doubts);
            _gaps.AddDoubles(_mobMove, moves.Moves);
            AddAll(moves.Moves, _expanded.Moves);
            allMoves = SortedRun<int>.Of(_animals.Length, [.. _stages.Select(stage => stage.Moves), moves.Moves]);
        }

        Mobs = new MobStaysBuilder(_animals, ownMoves, allMoves, new GapIndex(_gaps.Gaps, IsMove)).Build(mobNames);
        return [.. rows.Where(row => !IsMove(row.Kind))];
    }

    private List<GroupRow> ExpandJoiningAndLeaving(List<GroupRow> groups, Membership presence)
    {
        var doubts = new List<Gap>();
        GroupEvents.Expand(
            groups.Where(row => _effects[row.Kind] != HerdEffect.None), Mobs,
            (animal, row) => _effects[row.Kind] == HerdEffect.Joins ? BornBy(animal, row.Day) : BeforeOrOn(presence, animal, row.Day),
            null,
            (animal, row) => _expanded.Events[row.Kind].Add(new Staged<Nothing>(animal, row.Day, row.Line, default)),
            doubts.Add);
        _gaps.Add(doubts);
        _gaps.AddDoubles(_expanded, Enumerable.Range(0, _effects.Length).Where(kind => _effects[kind] != HerdEffect.None));
        return [.. groups.Where(row => _effects[row.Kind] == HerdEffect.None)];
    }

    private void ExpandEvents(List<GroupRow> groups, MobKept moves)
    {
        var doubts = new List<Gap>();
        GroupEvents.Expand(
            groups.Where(row => _vocabulary.Kinds[row.Kind] is EventKind), Mobs,
            (animal, row) => Membership.At(animal, row.Day),
            moves,
            (animal, row) => _expanded.Events[row.Kind].Add(new Staged<Nothing>(animal, row.Day, row.Line, default)),
            doubts.Add);
        _gaps.Add(doubts);
        _gaps.AddDoubles(_expanded, Enumerable.Range(0, _effects.Length).Where(kind => _effects[kind] == HerdEffect.None));
    }

    /// <summary>Whoever joins need only be born.</summary>
    private Presence BornBy(int animal, int day) =>
        day >= _animals[animal].BornLast || _animals[animal].BornFirst <= Day.Start ? Presence.In
        : day >= _animals[animal].BornFirst ? Presence.NotKnown
        : Presence.Out;

    /// <summary>Whoever leaves was in the day before, or came that day.</summary>
    private static Presence BeforeOrOn(Membership presence, int animal, int day)
    {
        var (before, on) = (presence.At(animal, day - 1), presence.At(animal, day));
        return before == Presence.In || on == Presence.In ? Presence.In
            : before == Presence.Out && on == Presence.Out ? Presence.Out
            : Presence.NotKnown;
    }

    private List<ChunkedList<Staged<Nothing>>> EventsOf(int kind) => [.. _stages.Append(_expanded).Select(stage => stage.Events[kind])];

    private static void AddAll(ChunkedList<Staged<int>> from, ChunkedList<Staged<int>> to)
    {
        for (var chunk = 0; chunk < from.ChunkCount; chunk++)
        {
            foreach (ref var row in from.Chunk(chunk))
            {
                to.Add(row);
            }
        }
    }
}
