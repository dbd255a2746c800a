namespace Byrelaw.Records.Animals;

/// <summary>The animals in the order of the herd, each once.</summary>
internal sealed class AnimalTable
{
    /// <summary>Where the columns stand; null where nothing could be read.</summary>
    public required AnimalColumns? Columns { get; init; }

    /// <summary>The farm's own numbers, sorted.</summary>
    public required string[] Numbers { get; init; }

    /// <summary>What else the rows say.</summary>
    public required AnimalRow[] Rows { get; init; }

    /// <summary>By fact id.</summary>
    public required FactColumn[] Facts { get; init; }

    /// <summary>How many more animals there may be whose number could not be read.</summary>
    public required int WithoutNumber { get; init; }

    /// <summary>Lines that name an animal again, with the line that named her first.</summary>
    public required List<(int Line, int FirstLine)> Duplicates { get; init; }

    /// <summary>Lines of animals that a person says are another, though sex or birth speaks against it, with the other's line.</summary>
    public required List<(int Line, int FirstLine)> NotOne { get; init; }

    /// <summary>Further numbers of animals, with their places.</summary>
    public required List<(string Number, int Place)> Also { get; init; }

    /// <summary>Finds an animal's place by her number.</summary>
    public required AnimalPlaces Places { get; init; }

    /// <summary>Sorts what was read; rows of one number become one animal.</summary>
    public static AnimalTable Of(AnimalStage stage, RecordKeeping? keeping)
    {
        var united = SameAnimals.Unite(stage, keeping);
        var order = Order(stage.Numbers);
        var duplicates = new List<(int, int)>();
        var kept = new List<int>(order.Length);
        foreach (var row in order)
        {
            if (kept.Count > 0 && stage.Numbers[kept[^1]] == stage.Numbers[row])
            {
                var first = kept[^1];
                duplicates.Add((stage.Rows[row].Line, stage.Rows[first].Line));
                stage.Rows[first] = stage.Rows[first].Merge(stage.Rows[row]);
                foreach (var fact in stage.Facts)
                {
                    fact.Merge(first, row);
                }
            }
            else if (!united.Gone.Contains(row))
            {
                kept.Add(row);
            }
        }

        int[] rows = [.. kept];
        string[] numbers = [.. rows.Select(row => stage.Numbers[row])];
        List<(string, int)> also = [.. united.Also.Select(one => (one.Number, Array.IndexOf(rows, one.Row)))];
        return new AnimalTable
        {
            Columns = stage.Columns,
            Numbers = numbers,
            Rows = [.. rows.Select(row => stage.Rows[row])],
            Facts = [.. stage.Facts.Select(fact => fact.InOrder(rows))],
            WithoutNumber = stage.RowsWithoutNumber + duplicates.Count,
            Duplicates = duplicates,
            NotOne = united.NotOne,
            Also = also,
            Places = new AnimalPlaces(numbers, also),
        };
    }

    /// <summary>The rows by number, rows of one number in the order of the file.</summary>
    private static int[] Order(List<string> numbers)
    {
        int[] order = [.. Enumerable.Range(0, numbers.Count)];
        for (var i = 1; i < order.Length; i++)
        {
            if (AnimalNumberOrder.Instance.Compare(numbers[i - 1], numbers[i]) > 0)
            {
                Array.Sort(order, (a, b) => AnimalNumberOrder.Instance.Compare(numbers[a], numbers[b]) is var way and not 0 ? way : a.CompareTo(b));
                break;
            }
        }

        return order;
    }
}
