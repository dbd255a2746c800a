namespace Byrelaw.Records.Building;

/// <summary>Numbers the mobs that any animal's <c>mob</c> or move names by the order of their names, whichever thread met them first.</summary>
internal sealed class MobNumbering
{
    private readonly int[] _final;

    /// <summary>Numbers the mobs.</summary>
    /// <param name="names">In the order they were met.</param>
    /// <param name="animals">Their <c>mob</c> cells.</param>
    /// <param name="targets">Where anyone moves to.</param>
    public MobNumbering(IReadOnlyList<string> names, AnimalRow[] animals, IEnumerable<int> targets)
    {
        var isUsed = new bool[names.Count];
        foreach (var animal in animals.Where(animal => animal.Mob >= 0))
        {
            isUsed[animal.Mob] = true;
        }

        foreach (var target in targets)
        {
            isUsed[target] = true;
        }

        int[] order = [.. Enumerable.Range(0, names.Count).Where(mob => isUsed[mob]).OrderBy(mob => names[mob], AnimalNumberOrder.Instance)];
        Names = [.. order.Select(mob => names[mob])];
        _final = new int[names.Count];
        Array.Fill(_final, MobStays.NotKnown);
        for (var i = 0; i < order.Length; i++)
        {
            _final[order[i]] = i;
        }
    }

    /// <summary>The names; a mob's number is its place.</summary>
    public string[] Names { get; }

    /// <summary>The number of a mob; <see cref="MobStays.NotKnown"/> for one that is named nowhere else.</summary>
    public int NumberOf(int mob) => mob < 0 ? mob : _final[mob];

    /// <summary>The same row with the mob's number, or null where nothing else names that mob.</summary>
    public GroupRow? Numbered(GroupRow row) =>
        row.Mob == GroupRow.WholeHerd ? row with { Target = NumberOf(row.Target) }
        : NumberOf(row.Mob) is var mob and >= 0 ? row with { Mob = mob, Target = NumberOf(row.Target) }
        : null;

    /// <summary>Numbers the mobs in the cells of animals.</summary>
    public void Number(AnimalRow[] animals)
    {
        for (var i = 0; i < animals.Length; i++)
        {
            animals[i].Mob = NumberOf(animals[i].Mob);
        }
    }

    /// <summary>Numbers where animals move to.</summary>
    public void Number(ChunkedList<Staged<int>> moves)
    {
        for (var chunk = 0; chunk < moves.ChunkCount; chunk++)
        {
            foreach (ref var row in moves.Chunk(chunk))
            {
                row.Result = NumberOf(row.Result);
            }
        }
    }
}
