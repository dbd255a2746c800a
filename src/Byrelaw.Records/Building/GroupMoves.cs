namespace Byrelaw.Records.Building;

/// <summary>
/// Finds out what a move of a mob or of the whole herd means for each animal. A mob's move takes
/// those who were in it the day before, and those who moved into it on that day.
/// </summary>
/// <param name="animals">Their <c>mob</c> cells.</param>
/// <param name="own">Moves of single animals.</param>
/// <param name="gaps">Rows that may have been a move.</param>
/// <param name="presence">Who is in the herd, by rows about single animals.</param>
internal sealed class GroupMoves(AnimalRow[] animals, SortedRun<int> own, GapIndex gaps, Membership presence)
{
    private readonly int[] _mobs = new int[animals.Length];
    private readonly int[] _next = new int[animals.Length];
    private readonly int[] _at = new int[animals.Length];

    /// <summary>What the rows mean: moves of single animals.</summary>
    public ChunkedList<Staged<int>> Moves { get; } = new();

    /// <summary>For animals of which it is not known whether a row means them.</summary>
    public List<Gap> Doubts { get; } = [];

    /// <summary>Goes through the rows, day by day.</summary>
    public void Expand(IEnumerable<GroupRow> rows)
    {
        for (var animal = 0; animal < animals.Length; animal++)
        {
            Start(animal);
        }

        foreach (var day in rows.OrderBy(row => row.Line).GroupBy(row => row.Day).OrderBy(group => group.Key))
        {
            var rowsOfDay = day.ToArray();
            for (var animal = 0; animal < animals.Length; animal++)
            {
                if (presence.At(animal, day.Key) != Presence.Out)
                {
                    Take(animal, day.Key, rowsOfDay);
                }
            }
        }
    }

    private void Start(int animal)
    {
        var born = animals[animal].BornFirst;
        var columnCounts = own.Starts[animal] == own.Starts[animal + 1] && gaps.OnAnyDay(animal) is null && gaps.First(animal, born, Day.End) is null;
        _mobs[animal] = columnCounts ? Math.Max(animals[animal].Mob, MobStays.NotKnown) : MobStays.NotKnown;
        _next[animal] = own.Starts[animal];
        _at[animal] = born;
    }

    private void Take(int animal, int day, GroupRow[] rows)
    {
        GoTo(animal, day);
        var before = _mobs[animal];
        var targets = new HashSet<int>();
        for (ref var next = ref _next[animal]; next < own.Starts[animal + 1] && own.Days[next] == day; next++)
        {
            targets.Add(own.Results[next]);
        }

        int[] intoOnTheDay = [.. targets];
        foreach (var row in rows)
        {
            var belongs = row.Mob == GroupRow.WholeHerd || row.Mob == before || intoOnTheDay.Contains(row.Mob);
            if (belongs && presence.At(animal, day) == Presence.In)
            {
                Moves.Add(new Staged<int>(animal, day, row.Line, row.Target));
                targets.Add(row.Target);
            }
            else if (belongs || before == MobStays.NotKnown)
            {
                Doubts.Add(new Gap(animal, row.Kind, day, day, row.Line));
                targets.Add(MobStays.NotKnown);
            }
        }

        if (targets.Count > 0)
        {
            _mobs[animal] = targets.Count == 1 ? targets.First() : MobStays.NotKnown;
        }

        _at[animal] = day;
    }

    /// <summary>Follows the animal's own moves up to the day before.</summary>
    private void GoTo(int animal, int day)
    {
        ref var next = ref _next[animal];
        for (; next < own.Starts[animal + 1] && own.Days[next] < day; next++)
        {
            var isSecondOfDay = next > own.Starts[animal] && own.Days[next - 1] == own.Days[next];
            _mobs[animal] = isSecondOfDay && _mobs[animal] != own.Results[next] ? MobStays.NotKnown : own.Results[next];
            _at[animal] = own.Days[next];
        }

        if (gaps.OnAnyDay(animal) is not null || gaps.First(animal, _at[animal], day) is not null)
        {
            _mobs[animal] = MobStays.NotKnown;
        }
    }
}
