namespace Byrelaw.Records.Building;

/// <summary>A row that can be read, of an animal that it cannot be about.</summary>
/// <param name="Animal">The animal that it names.</param>
/// <param name="Kind">What it says happened.</param>
/// <param name="Day">When.</param>
/// <param name="Line">Where.</param>
/// <param name="Left">The day she left; null for a male with what only females have, and a steer with what only bulls do.</param>
internal readonly record struct WrongAnimal(int Animal, int Kind, int Day, int Line, int? Left)
{
    /// <summary>Whether a steer is said to have been put in with cows.</summary>
    public bool IsSteer { get; init; }
}

/// <summary>
/// Takes rows out whose animal surely is another: what only females have, of a male, what only bulls do, of a steer, and anything after an animal left for good. Each may
/// be about anybody. What stands there after a sale is another farm's record of her, as books kept for a whole region have it; but a bull whom nobody says is back is
/// let in by no row.
/// </summary>
internal sealed class WrongAnimals
{
    // Common practice, no source: what happens to cows and heifers only.
    private static readonly string[] OfFemales =
        ["calving", "abortion", "heat", "mating", "transfer", "pregnancy test", "retained membranes", "metritis", "egg collection"];

    private readonly Lock _gate = new();
    private readonly List<WrongAnimal> _found = [];
    private readonly AnimalRow[] _animals;
    private readonly Vocabulary _vocabulary;
    private readonly bool[] _isOfFemales;
    private readonly bool[] _letsBullIn;
    private readonly int[] _firstLeft;
    private readonly Dictionary<int, List<(int Day, EventKind Kind)>> _changes = [];

    /// <summary>Takes them out of what was read.</summary>
    /// <param name="vocabulary">The words.</param>
    /// <param name="animals">In the order of the herd.</param>
    /// <param name="stages">What was read.</param>
    /// <param name="mayBeBack">Males that moved after they left: one of the two rows is wrong, so each may have come back on the day he left.</param>
    public static IReadOnlyList<WrongAnimal> TakenOut(Vocabulary vocabulary, AnimalRow[] animals, EventStage[] stages, out List<Gap> mayBeBack)
    {
        var wrong = new WrongAnimals(vocabulary, animals, stages);
        Parallel.For(0, vocabulary.Kinds.Length, kind =>
        {
            foreach (var stage in stages)
            {
                wrong.TakeOut(kind, stage.Events[kind]);
                wrong.TakeOut(kind, stage.Tests[kind]);
                wrong.TakeOut(kind, stage.Measures[kind]);
            }
        });
        mayBeBack = wrong.MayBeBack(stages);
        return wrong._found;
    }

    /// <summary>Takes who is male, and who left when by rows of her own.</summary>
    private WrongAnimals(Vocabulary vocabulary, AnimalRow[] animals, EventStage[] stages)
    {
        _animals = animals;
        _vocabulary = vocabulary;
        _isOfFemales = Kinds(OfFemales);
        _letsBullIn = Kinds(["bull in"]);
        _firstLeft = new int[animals.Length];
        Array.Fill(_firstLeft, int.MaxValue);
        foreach (var kind in vocabulary.Kinds.OfType<EventKind>().Where(kind => kind.Effect != HerdEffect.None))
        {
            foreach (var stage in stages)
            {
                Add(kind, stage.Events[kind.Id]);
            }
        }
    }

    /// <summary>Goes through rows about single animals.</summary>
    private void TakeOut<TResult>(int kind, ChunkedList<Staged<TResult>> rows)
        where TResult : struct
    {
        if (_vocabulary.Kinds[kind] is EventKind { Effect: not HerdEffect.None })
        {
            return;
        }

        for (var chunk = 0; chunk < rows.ChunkCount; chunk++)
        {
            foreach (ref var row in rows.Chunk(chunk))
            {
                if (row.Animal == Staged<TResult>.TakenOut)
                {
                    continue;
                }

                var sex = _animals[row.Animal].Sex;
                var isMale = _isOfFemales[kind] && sex is Sex.Male or Sex.Steer;
                var isSteer = _letsBullIn[kind] && sex == Sex.Steer;
                var forGood = !_letsBullIn[kind] || sex == Sex.Female;
                if (isMale || isSteer || (row.Day > _firstLeft[row.Animal] && LeftBefore(row.Animal, row.Day, forGood) < int.MaxValue))
                {
                    lock (_gate)
                    {
                        _found.Add(new WrongAnimal(row.Animal, kind, row.Day, row.Line, isMale || isSteer ? null : LeftBefore(row.Animal, row.Day, forGood)) { IsSteer = isSteer });
                    }

                    row.Animal = Staged<TResult>.TakenOut;
                }
            }
        }
    }

    private List<Gap> MayBeBack(EventStage[] stages)
    {
        var back = new List<Gap>();
        var joins = Array.Find([.. _vocabulary.Kinds], kind => kind is EventKind { Effect: HerdEffect.Joins });
        foreach (var stage in joins is null ? [] : stages)
        {
            for (var chunk = 0; chunk < stage.Moves.ChunkCount; chunk++)
            {
                foreach (ref var row in stage.Moves.Chunk(chunk))
                {
                    if (row.Animal != Staged<int>.TakenOut && _animals[row.Animal].Sex is Sex.Male or Sex.NotKnown
                        && row.Day > _firstLeft[row.Animal] && LeftBefore(row.Animal, row.Day, forGood: false) is var left and < int.MaxValue)
                    {
                        back.Add(new Gap(row.Animal, joins!.Id, left, left, row.Line));
                    }
                }
            }
        }

        return back;
    }

    private bool[] Kinds(string[] names)
    {
        var which = new bool[_vocabulary.Kinds.Length];
        foreach (var name in names)
        {
            if (_vocabulary.FindKind(name) is { } kind)
            {
                which[kind.Id] = true;
            }
        }

        return which;
    }

    private void Add(EventKind kind, ChunkedList<Staged<Nothing>> rows)
    {
        for (var chunk = 0; chunk < rows.ChunkCount; chunk++)
        {
            foreach (ref var row in rows.Chunk(chunk))
            {
                if (row.Animal == Staged<Nothing>.TakenOut)
                {
                    continue;
                }

                if (!_changes.TryGetValue(row.Animal, out var changes))
                {
                    _changes.Add(row.Animal, changes = []);
                }

                changes.Add((row.Day, kind));
                _firstLeft[row.Animal] = kind.Effect == HerdEffect.Leaves ? Math.Min(_firstLeft[row.Animal], row.Day) : _firstLeft[row.Animal];
            }
        }
    }

    /// <summary>The day before this one on which she left (for good) and has not come back since; int.MaxValue where the row may be hers.</summary>
    private int LeftBefore(int animal, int day, bool forGood = true)
    {
        var (left, joined) = (int.MaxValue, Day.Start);
        foreach (var (on, change) in _changes[animal])
        {
            if (on <= day && change.Effect == HerdEffect.Joins)
            {
                joined = Math.Max(joined, on);
            }
            else if (on < day && change.Effect == HerdEffect.Leaves && (change.IsForGood || !forGood))
            {
                left = left == int.MaxValue ? on : Math.Max(left, on);
            }
        }

        return left < int.MaxValue && joined < left ? left : int.MaxValue;
    }
}
