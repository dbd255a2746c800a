namespace Byrelaw.Records.Building;

/// <summary>Who is in which mob, and who is in the herd, when: from rows about single animals, and what rows about mobs and the herd mean for each.</summary>
/// <param name="vocabulary">The words.</param>
/// <param name="animals">In the order of the herd; the mobs in their cells are numbered here.</param>
/// <param name="stages">What each thread has read; the mobs that animals move to are numbered here.</param>
/// <param name="expanded">Takes what rows of mobs and the herd mean for each animal.</param>
/// <param name="gaps">Takes what is in doubt.</param>
internal sealed class WhoIsWhere(Vocabulary vocabulary, AnimalRow[] animals, EventStage[] stages, EventStage expanded, GapTable gaps)
{
    private readonly int _mobMove = vocabulary.MobMove.Id;

    /// <summary>Who is in which mob.</summary>
    public MobStays Mobs { get; private set; } = null!;

    /// <summary>Who is in the herd.</summary>
    public Membership Membership { get; private set; } = null!;

    /// <summary>From when to when records of each animal can have been kept.</summary>
    public MembershipBuilder Kept { get; private set; } = null!;

    /// <summary>Rows about a mob that no animal is ever in.</summary>
    public List<GroupRow> OfUnknownMob { get; } = [];

    /// <summary>Rows that alone name a mob, whose name may be a slip for another's.</summary>
    public List<SlippedMob> Slipped { get; } = [];

    /// <summary>Where animals that nobody listed were moved to.</summary>
    public MobRow[] Strangers { get; private set; } = [];

    /// <summary>Moves of known mobs and of the herd.</summary>
    public GroupRow[] MovesOfMobs { get; private set; } = [];

    /// <summary>Works it out.</summary>
    /// <param name="mobNames">In the order they were met.</param>
    /// <param name="groups">Rows about mobs and the herd.</param>
    /// <param name="isNumber">Whether a name is an animal's number.</param>
    /// <returns>Those about known mobs and the herd that are about neither.</returns>
    public List<GroupRow> Build(IReadOnlyList<string> mobNames, List<GroupRow> groups, Predicate<string> isNumber)
    {
        groups = TakeOutSlips(mobNames, groups, isNumber);
        var ownMoves = SortedRun<int>.Of(animals.Length, [.. stages.Select(stage => stage.Moves)]);
        var (numbering, rows) = NumberMobs(mobNames, groups, ownMoves);
        ownMoves = ownMoves with { Results = Array.ConvertAll(ownMoves.Results, numbering.NumberOf) };
        var joining = new JoiningAndLeaving(vocabulary, animals, stages, expanded);
        Kept = joining.Membership(gaps.Gaps);
        Membership = Kept.Build();
        var known = gaps.Gaps.Count;
        var others = ExpandMoves(rows, numbering.Names, ownMoves, Membership);
        var rest = joining.Expand(others, Mobs, Membership, gaps);
        if (rest.Count < others.Count || gaps.Gaps.Count > known)
        {
            Kept = joining.Membership(gaps.Gaps);
            Membership = Kept.Build();
        }

        return rest;
    }

    /// <summary>A name that one animal alone is given, one slip away from another's, may be that other's: nobody knows which mob is meant. So it is with one that speaks of cows, and is a bull's alone.</summary>
    private List<GroupRow> TakeOutSlips(IReadOnlyList<string> mobNames, List<GroupRow> groups, Predicate<string> isNumber)
    {
        IEnumerable<Staged<int>> moves = stages.SelectMany(stage => stage.Moves.All()).Where(row => row.Animal != Staged<int>.TakenOut);
        var slips = MobSlips.Of(
            mobNames, animals.Select((animal, place) => (animal.Mob, place)).Concat(moves.Select(row => (row.Result, row.Animal))).Concat(groups.Where(row => row.Kind == _mobMove).Select(row => (row.Target, -2 - row.Mob))),
            groups.Select(row => row.Mob), (mob, animal) => animal >= 0 && animals[animal].Sex == Sex.Male && (MobsOfCows.IsCalledSo(mobNames[mob]) || isNumber(mobNames[mob])));
        if (slips.Count == 0)
        {
            return groups;
        }

        for (var animal = 0; animal < animals.Length; animal++)
        {
            if (slips.TryGetValue(animals[animal].Mob, out var meant))
            {
                Slipped.Add(new SlippedMob(new RowInDoubt(animal, Day.Start, animals[animal].Line, IsOfAnimals: true), mobNames[animals[animal].Mob], mobNames[meant]));
                animals[animal].Mob = AnimalRow.MobUnreadable;
            }
        }

        foreach (var stage in stages)
        {
            for (var chunk = 0; chunk < stage.Moves.ChunkCount; chunk++)
            {
                foreach (ref var row in stage.Moves.Chunk(chunk))
                {
                    if (row.Animal != Staged<int>.TakenOut && slips.TryGetValue(row.Result, out var meant))
                    {
                        Slipped.Add(new SlippedMob(new RowInDoubt(row.Animal, row.Day, row.Line), mobNames[row.Result], mobNames[meant]));
                        gaps.Add([new Gap(row.Animal, _mobMove, row.Day, row.Day, row.Line)]);
                        row.Animal = Staged<int>.TakenOut;
                    }
                }
            }
        }

        foreach (var row in groups.Where(row => row.Kind == _mobMove && slips.ContainsKey(row.Target)))
        {
            Slipped.Add(new SlippedMob(new RowInDoubt(-1, row.Day, row.Line), mobNames[row.Target], mobNames[slips[row.Target]]));
            gaps.Add([new Gap(-1, _mobMove, row.Day, row.Day, row.Line)]);
        }

        return [.. groups.Where(row => row.Kind != _mobMove || !slips.ContainsKey(row.Target))];
    }

    /// <summary>Numbers the mobs, in the cells of animals too. A row about a mob that nothing else names may be about anyone, before it is asked
    /// who is in the herd.</summary>
    /// <returns>With the rows about known mobs and the herd.</returns>
    private (MobNumbering Numbering, List<GroupRow> Rows) NumberMobs(IReadOnlyList<string> mobNames, List<GroupRow> groups, SortedRun<int> ownMoves)
    {
        var targets = groups.Where(row => row.Kind == _mobMove).Select(row => row.Target);
        var numbering = new MobNumbering(mobNames, animals, ownMoves.Results.Concat(targets));
        var known = new List<GroupRow>();
        foreach (var row in groups)
        {
            if (numbering.Numbered(row) is { } numbered)
            {
                known.Add(numbered);
            }
            else
            {
                OfUnknownMob.Add(row);
                gaps.Add([new Gap(-1, row.Kind, row.Day, row.Day, row.Line)]);
            }
        }

        Strangers = [.. stages.SelectMany(stage => stage.MovesOfStrangers).Select(row => row with { Mob = numbering.NumberOf(row.Mob) }).OrderBy(row => row.Day).ThenBy(row => row.Line)];
        numbering.Number(animals);
        Array.ForEach(stages, stage => numbering.Number(stage.Moves));
        return (numbering, known);
    }

    /// <summary>Works out who is in which mob. What is left are the rows that are no moves.</summary>
    private List<GroupRow> ExpandMoves(List<GroupRow> rows, string[] mobNames, SortedRun<int> ownMoves, Membership presence)
    {
        bool IsMove(int kind) => kind == _mobMove;
        MovesOfMobs = [.. rows.Where(row => IsMove(row.Kind))];
        var moves = new GroupMoves(animals, ownMoves, new GapIndex(gaps.Gaps, IsMove), presence);
        var allMoves = ownMoves;
        if (MovesOfMobs.Length > 0)
        {
            moves.Expand(MovesOfMobs);
            gaps.Add(moves.Doubts);
            gaps.AddDoubles(_mobMove, moves.Moves);
            AddAll(moves.Moves, expanded.Moves);
            allMoves = SortedRun<int>.Of(animals.Length, [.. stages.Select(stage => stage.Moves), moves.Moves]);
        }

        Mobs = new MobStaysBuilder(animals, ownMoves, allMoves, new GapIndex(gaps.Gaps, IsMove)).Build(mobNames);
        return [.. rows.Where(row => !IsMove(row.Kind))];
    }

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
