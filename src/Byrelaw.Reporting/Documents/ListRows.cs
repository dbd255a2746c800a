namespace Byrelaw.Reporting.Documents;

/// <summary>A row each for animals of a list, by number: found by her number, her mob, her answer, her danger.</summary>
/// <param name="Caption">What they have in common.</param>
/// <param name="Axis">The days of their strips; null where they have none.</param>
/// <param name="Rows">In order.</param>
public sealed record ListRows(string Caption, YearAxis? Axis, ImmutableArray<ListRow> Rows) : Drawn
{
    /// <inheritdoc/>
    public override IEnumerable<Element> InWords()
    {
        var table = new Table(Caption, "number", "tag", "mob", "cow or heifer", "what is said of her");
        foreach (var row in Rows)
        {
            table.Add(row.Page is null ? Wording.Bold(row.Number) : Wording.Link(Wording.Bold(row.Number), row.Page), row.Tag, row.Mob, row.Sort, row.InCalf == InCalf.NotTold ? row.Says : $"{Wording.Danger(row.InCalf)} {row.Says}");
        }

        return table.IsEmpty ? [] : [table];
    }
}

/// <summary>One animal's row.</summary>
/// <param name="Number">Her number on the farm.</param>
/// <param name="Page">Her page; null where she has none.</param>
/// <param name="Answer">Her answer on the list.</param>
/// <param name="InCalf">What the floor says of her.</param>
public sealed record ListRow(string Number, string? Page, Answer Answer, InCalf InCalf)
{
    /// <summary>The end of her official identity; empty where there is none.</summary>
    public string Tag { get; init; } = "";

    /// <summary>Her mob; empty where it is not known.</summary>
    public string Mob { get; init; } = "";

    /// <summary>Cow or heifer.</summary>
    public string Sort { get; init; } = "";

    /// <summary>Her own facts; what is the same for a section stands in its head.</summary>
    public required Wording Says { get; init; }

    /// <summary>Her last half year and the sessions, drawn; none where nothing is.</summary>
    public ImmutableArray<DayMark> Strip { get; init; } = [];
}
