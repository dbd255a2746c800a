namespace Byrelaw.Records.Building;

/// <summary>Makes out of moves, the <c>mob</c> column and what could not be read which mob each animal is in, when.</summary>
/// <param name="animals">Their <c>mob</c> cells.</param>
/// <param name="own">Moves of single animals.</param>
/// <param name="all">These, and what moves of mobs and of the herd mean for each animal.</param>
/// <param name="gaps">Rows that may have been a move.</param>
internal sealed class MobStaysBuilder(AnimalRow[] animals, SortedRun<int> own, SortedRun<int> all, GapIndex gaps)
{
    private readonly Stretches _stays = new(animals.Length);

    /// <summary>The stays of all animals.</summary>
    public MobStays Build(string[] names)
    {
        for (var animal = 0; animal < animals.Length; animal++)
        {
            if (gaps.OnAnyDay(animal) is { } gap)
            {
                _stays.Add(Day.Start, MobStays.NotKnown, gap.Line);
            }
            else
            {
                AddStart(animal);
                AddMoves(animal);
            }

            _stays.Next();
        }

        return new MobStays { Names = names, Starts = _stays.Starts, From = _stays.From, Mob = _stays.States, Lines = _stays.Lines, Columns = Array.ConvertAll(animals, animal => animal.Mob) };
    }

    /// <summary>The mob before the first move: the column's, for an animal without a move of her own.</summary>
    private void AddStart(int animal)
    {
        if (own.Starts[animal] < own.Starts[animal + 1])
        {
            return;
        }

        var column = animals[animal].Mob;
        if (gaps.First(animal, animals[animal].BornFirst, Day.End) is { } gap)
        {
            // It may have been a move of her own, and then the column does not count.
            _stays.Add(Day.Start, MobStays.NotKnown, gap.Line);
        }
        else if (column != AnimalRow.NoMob)
        {
            _stays.Add(Day.Start, column == AnimalRow.MobUnreadable ? MobStays.NotKnown : column, line: 0);
        }
    }

    private void AddMoves(int animal)
    {
        var at = animals[animal].BornFirst;
        var i = all.Starts[animal];
        var end = all.Starts[animal + 1];
        while (true)
        {
            var day = i < end ? all.Days[i] : Day.End;
            if (gaps.First(animal, at, day) is { } gap)
            {
                _stays.Add(gap.From, MobStays.NotKnown, gap.Line);
            }

            if (i == end)
            {
                return;
            }

            var line = all.Lines[i];
            var mob = all.Results[i];
            for (i++; i < end && all.Days[i] == day; i++)
            {
                mob = all.Results[i] == mob ? mob : MobStays.NotKnown;
            }

            _stays.Add(day, gaps.First(animal, day, day + 1) is null ? mob : MobStays.NotKnown, line);
            at = day + 1;
        }
    }
}
