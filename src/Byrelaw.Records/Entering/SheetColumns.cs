namespace Byrelaw.Records.Entering;

/// <summary>What the columns of a sheet hold: a kind of record, or a detail of one.</summary>
internal sealed class SheetColumns
{
    private static readonly string[] Known = ["sheet", "row", "date", "session", "animal", "done", "reason", "note"];

    private readonly SourceTable _table;

    private SheetColumns(SourceTable table) => _table = table;

    /// <summary>The kinds with their columns, in the order of the sheet.</summary>
    public List<(Kind Kind, int Column, List<(EntryDetail Detail, int Column)> Details)> Kinds { get; } = [];

    /// <summary>Headings that nobody knows: what stands below them may be of any kind.</summary>
    public List<(string Heading, int Column)> Unknown { get; } = [];

    /// <summary>What a cell of the sheet's own columns says.</summary>
    public string this[SourceRow row, string heading] => FilledSheet.Cell(row, _table.Find(heading));

    /// <summary>Reads the headings.</summary>
    public static SheetColumns Of(SourceTable table, Vocabulary vocabulary, List<Diagnostic> problems)
    {
        var columns = new SheetColumns(table);
        for (var column = 0; column < table.Headings.Count; column++)
        {
            var heading = table.Headings[column];
            if (heading.Length > 0 && !Known.Contains(NameFolding.Fold(heading)) && !columns.Add(heading, column, vocabulary))
            {
                columns.Unknown.Add((heading, column));
                problems.Add(SheetProblems.UnknownColumn(table, heading, NearestName.OnlyOne(heading, vocabulary.Kinds.Select(kind => kind.Name))));
            }
        }

        return columns;
    }

    private bool Add(string heading, int column, Vocabulary vocabulary)
    {
        var parts = heading.Split(':', 2, StringSplitOptions.TrimEntries);
        if (vocabulary.FindKind(parts[0]) is not { } kind || kind is EventKind { IsMobMove: true })
        {
            return false;
        }

        if (parts.Length == 1)
        {
            Of(kind, column);
            return true;
        }

        if (kind.Details.FirstOrDefault(detail => NameFolding.Fold(detail.Name) == NameFolding.Fold(parts[1])) is not { } found)
        {
            return false;
        }

        Of(kind, -1).Add((found, column));
        return true;
    }

    private List<(EntryDetail Detail, int Column)> Of(Kind kind, int column)
    {
        var at = Kinds.FindIndex(one => one.Kind.Id == kind.Id);
        if (at < 0)
        {
            Kinds.Add((kind, column, []));
            return Kinds[^1].Details;
        }

        Kinds[at] = Kinds[at] with { Column = column < 0 ? Kinds[at].Column : column };
        return Kinds[at].Details;
    }
}
