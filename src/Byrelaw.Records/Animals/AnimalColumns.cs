namespace Byrelaw.Records.Animals;

/// <summary>The columns of <c>animals.csv</c>.</summary>
internal sealed class AnimalColumns
{
    private const string Expected = "expected `animal`, `born`, `sex`, `mob`, `parity`, `parity on` or a fact that the rule files declare";

    /// <summary>A cell of a source that nobody reads and that may tell of a calf or a service.</summary>
    public const string ToldBesides = "told besides";

    private static readonly string[] Required = ["animal"];

    private AnimalColumns(ColumnMap map, Vocabulary vocabulary)
    {
        Map = map;
        Facts = [.. vocabulary.Facts.Select(fact => map[fact.Name])];
        FactIsDoubled = [.. vocabulary.Facts.Select(fact => map.IsDoubled(fact.Name))];
    }

    /// <summary>The columns that are there whatever is declared.</summary>
    public ColumnMap Map { get; }

    /// <summary>By fact id: the cell; -1 where there is no such column, or two.</summary>
    public int[] Facts { get; }

    /// <summary>By fact id: whether two columns say it.</summary>
    public bool[] FactIsDoubled { get; }

    /// <summary>Reads the heading; null where nothing can be read under it.</summary>
    public static AnimalColumns? Read(RowText heading, Vocabulary vocabulary, List<Diagnostic> problems)
    {
        var columns = new Dictionary<string, string>(StringComparer.Ordinal)
        {
            ["animal"] = "animal",
            ["born"] = "born",
            ["sex"] = "sex",
            ["mob"] = "mob",
            ["parity"] = "parity",
            ["parity on"] = "parity on",
            [ToldBesides] = ToldBesides,
        };
        foreach (var fact in vocabulary.Facts)
        {
            foreach (var name in fact.AlsoNames.Prepend(fact.Name))
            {
                columns.TryAdd(ColumnMap.Fold(name), fact.Name);
            }
        }

        foreach (var (name, builtIn, _) in vocabulary.Called.Where(called => columns.ContainsKey(called.BuiltIn)))
        {
            columns.TryAdd(ColumnMap.Fold(name), builtIn);
        }

        // Every farm's file may have these two, also where no rule asks for them.
        columns.TryAdd("official id", "official_id");
        columns.TryAdd("breed", "breed");
        return ColumnMap.Read(heading, columns, Required, Expected, problems) is { } map ? new AnimalColumns(map, vocabulary) : null;
    }
}
