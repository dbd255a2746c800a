namespace Byrelaw.Records.Sources;

/// <summary>When, of whom and by which row something happened.</summary>
/// <param name="Place">The row.</param>
/// <param name="Date">In the landed form.</param>
/// <param name="Animal">Her number, a mob or the herd.</param>
internal readonly record struct EventHead(RowPlace Place, string Date, string Animal)
{
    /// <summary>The day of entry; empty for none.</summary>
    public string Recorded { get; init; } = "";

    /// <summary>The note.</summary>
    public string Note { get; init; } = "";

    /// <summary>The pot's number.</summary>
    public string Sample { get; init; } = "";

    /// <summary>The row of a sheet that it is of.</summary>
    public string SheetRow { get; init; } = "";
}

/// <summary>Rows of <c>events.csv</c>, made from sources.</summary>
internal sealed class EventRows
{
    private const int Details = 8;
    private readonly Dictionary<string, int> _details = new(StringComparer.Ordinal);
    private readonly bool _hasSheetRows;

    /// <summary>Starts with a column for each detail that the rule files declare.</summary>
    /// <param name="vocabulary">The words.</param>
    /// <param name="hasSheetRows">Whether rows may name a sheet's row.</param>
    public EventRows(Vocabulary vocabulary, bool hasSheetRows = false)
    {
        _hasSheetRows = hasSheetRows;
        string[] details = [.. DetailColumn.Names(vocabulary)];
        for (var i = 0; i < details.Length; i++)
        {
            _details.Add(details[i], Details + i);
        }

        Rows = new LandedRows(["date", "animal", "kind", "value", "unit", "note", "recorded", "sample", .. details, .. hasSheetRows ? ["sheet row"] : Array.Empty<string>()]);
    }

    /// <summary>The rows.</summary>
    public LandedRows Rows { get; }

    /// <summary>Where a detail stands in a row.</summary>
    public int PlaceOf(string detail) => _details[NameFolding.Fold(detail)];

    /// <summary>A row without anything in it, to put details into.</summary>
    public string?[] Begin() => new string?[Rows.Headings.Count];

    /// <summary>Adds one.</summary>
    /// <param name="head">When, of whom and by which row.</param>
    /// <param name="kind">What happened.</param>
    /// <param name="value">What was found.</param>
    /// <param name="unit">The value's unit.</param>
    /// <param name="row">With the details that are known.</param>
    public void Add(EventHead head, string kind, string value, string unit, string?[] row)
    {
        (row[0], row[1], row[2], row[3], row[4]) = (head.Date, head.Animal, kind, value, unit);
        (row[5], row[6], row[7]) = (head.Note, head.Recorded, head.Sample);
        if (_hasSheetRows)
        {
            row[^1] = head.SheetRow;
        }

        Rows.Add(head.Place, row);
    }

    /// <summary>Adds a row that may be of a kind: a test whose result is not in, or what nobody can tell for sure.</summary>
    public void AddHint(EventHead head, Kind kind) =>
        Add(kind is TestKind ? head : head with { Recorded = Unreadable.Of("") }, kind.Name, kind is TestKind ? "pending" : "", "", Begin());

    /// <summary>Adds a row that may say anything of a kind, or of any kind, of anybody on any day.</summary>
    public void AddUnreadable(RowPlace place, string? kind)
    {
        var cells = new string?[Rows.Headings.Count];
        (cells[0], cells[1], cells[2]) = (Unreadable.Of(""), Unreadable.Of(""), kind ?? Unreadable.Of(""));
        Rows.Add(place, cells);
    }
}
