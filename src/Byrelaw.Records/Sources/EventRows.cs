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
}

/// <summary>Rows of <c>events.csv</c>, made from sources.</summary>
internal sealed class EventRows
{
    private const int Details = 8;
    private readonly Dictionary<string, int> _details = new(StringComparer.Ordinal);

    /// <summary>Starts with a column for each detail that the rule files declare.</summary>
    public EventRows(Vocabulary vocabulary)
    {
        string[] details = [.. DetailColumn.Names(vocabulary)];
        for (var i = 0; i < details.Length; i++)
        {
            _details.Add(details[i], Details + i);
        }

        Rows = new LandedRows(["date", "animal", "kind", "value", "unit", "note", "recorded", "sample", .. details]);
    }

    /// <summary>The rows.</summary>
    public LandedRows Rows { get; }

    /// <summary>Adds one.</summary>
    public void Add(EventHead head, string kind, string value, string unit, Dictionary<string, string> details)
    {
        var cells = new string?[Rows.Headings.Count];
        (cells[0], cells[1], cells[2], cells[3], cells[4]) = (head.Date, head.Animal, kind, value, unit);
        (cells[5], cells[6], cells[7]) = (head.Note, head.Recorded, head.Sample);
        foreach (var (name, detail) in details)
        {
            cells[_details[NameFolding.Fold(name)]] = detail;
        }

        Rows.Add(head.Place, cells);
    }

    /// <summary>Adds a row that may say anything of a kind, or of any kind, of anybody on any day.</summary>
    public void AddUnreadable(RowPlace place, string? kind)
    {
        var cells = new string?[Rows.Headings.Count];
        (cells[0], cells[1], cells[2]) = (Unreadable.Of(""), Unreadable.Of(""), kind ?? Unreadable.Of(""));
        Rows.Add(place, cells);
    }
}
