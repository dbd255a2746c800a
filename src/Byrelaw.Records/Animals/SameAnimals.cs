namespace Byrelaw.Records.Animals;

/// <summary>Makes one row of the rows that a person says are one animal: <c>same animal "301", "1301"</c>.</summary>
internal sealed class SameAnimals
{
    /// <summary>Rows that are part of another now.</summary>
    public HashSet<int> Gone { get; } = [];

    /// <summary>Further numbers, with the row of the animal that they are of.</summary>
    public List<(string Number, int Row)> Also { get; } = [];

    /// <summary>Lines of animals that cannot be the other by sex or birth, with the other's line.</summary>
    public List<(int Line, int FirstLine)> NotOne { get; } = [];

    /// <summary>Puts rows together; facts that differ are not known.</summary>
    public static SameAnimals Unite(AnimalStage stage, RecordKeeping? keeping)
    {
        var united = new SameAnimals();
        foreach (var said in (keeping?.Compared ?? []).Where(said => said.AreOne))
        {
            united.Unite(stage, said.Numbers);
        }

        return united;
    }

    private void Unite(AnimalStage stage, ImmutableArray<string> numbers)
    {
        var first = numbers.Select(stage.Numbers.IndexOf).Where(row => row >= 0 && !Gone.Contains(row)).DefaultIfEmpty(-1).First();
        foreach (var number in first < 0 ? [] : numbers.Where(number => number != stage.Numbers[first]))
        {
            var row = stage.Numbers.IndexOf(number);
            if (row >= 0 && !stage.Rows[first].MayBe(stage.Rows[row]))
            {
                NotOne.Add((stage.Rows[row].Line, stage.Rows[first].Line));
                continue;
            }

            Also.Add((number, first));
            if (row >= 0 && Gone.Add(row))
            {
                stage.Rows[first] = stage.Rows[first].Unite(stage.Rows[row]);
                foreach (var fact in stage.Facts)
                {
                    fact.Unite(first, row);
                }
            }
        }
    }
}
