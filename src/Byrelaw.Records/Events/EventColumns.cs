namespace Byrelaw.Records.Events;

/// <summary>The columns of <c>events.csv</c>: the cell of each, -1 where there is none.</summary>
internal sealed record EventColumns(int Count, int Date, int Animal, int Kind, int Value, int Unit, int Recorded, int Note = -1, int Sample = -1, int SheetRow = -1)
{
    /// <summary>Columns of details.</summary>
    public ImmutableArray<DetailColumn> Details { get; init; } = [];

    /// <summary>Headings of columns that nobody knows.</summary>
    public ImmutableArray<string> Unknown { get; init; } = [];

    /// <summary>Where these stand.</summary>
    public ImmutableArray<int> UnknownCells { get; init; } = [];

    private static readonly string[] Required = ["date", "animal", "kind"];

    private static readonly string[] Others = ["value", "unit", "note", "recorded", "sample", "sheet row"];

    /// <summary>Whether the note stands right behind the value, so that the digits behind a decimal comma fall into it.</summary>
    public bool NoteFollowsValue => Value >= 0 && Note == Value + 1;

    /// <summary>Reads the heading; null where nothing can be read under it.</summary>
    public static EventColumns? Read(RowText heading, Vocabulary vocabulary, List<Diagnostic> problems)
    {
        string[] known = [.. Required.Concat(Others).Concat(DetailColumn.Names(vocabulary)).Distinct(StringComparer.Ordinal)];
        if (ColumnMap.Read(heading, known.ToDictionary(name => name, StringComparer.Ordinal), Required, $"expected {ColumnMap.Listed(known, "or")}", problems) is not { } map)
        {
            return null;
        }

        // Two columns for a result, its unit or its day of entry leave every row open.
        return map.IsDoubled("value") || map.IsDoubled("unit") || map.IsDoubled("recorded")
            ? null
            : new EventColumns(map.CellCount, map["date"], map["animal"], map["kind"], map["value"], map["unit"], map["recorded"], map["note"], map["sample"], map["sheet row"])
            {
                Details = DetailColumn.Of(vocabulary, map),
                Unknown = [.. map.UnknownHeads],
                UnknownCells = [.. map.Unknown],
            };
    }
}
