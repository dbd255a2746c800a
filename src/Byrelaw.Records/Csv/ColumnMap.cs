namespace Byrelaw.Records.Csv;

/// <summary>Which cell of a row belongs to which column.</summary>
internal sealed class ColumnMap
{
    private readonly Dictionary<string, int> _cells = new(StringComparer.Ordinal);
    private readonly HashSet<string> _doubled = new(StringComparer.Ordinal);

    private readonly List<int> _unknown = [];
    private readonly List<string> _unknownHeads = [];

    private ColumnMap(int cellCount) => CellCount = cellCount;

    /// <summary>How many cells every row must have.</summary>
    public int CellCount { get; }

    /// <summary>The cell of a column; -1 where there is none, or two.</summary>
    public int this[string column] => _doubled.Contains(column) ? -1 : _cells.GetValueOrDefault(column, -1);

    /// <summary>Cells under headings that are none of the columns.</summary>
    public IReadOnlyList<int> Unknown => _unknown;

    /// <summary>These headings.</summary>
    public IReadOnlyList<string> UnknownHeads => _unknownHeads;

    /// <summary>Whether a column stands there twice, so that neither is read.</summary>
    public bool IsDoubled(string column) => _doubled.Contains(column);

    /// <summary>Reads a heading; null where nothing can be read under it. All problems are reported.</summary>
    /// <param name="heading">The heading line.</param>
    /// <param name="columns">Columns by their folded heads.</param>
    /// <param name="required">Without these nothing can be read.</param>
    /// <param name="expected">What is said to be expected where a head is none of the columns.</param>
    /// <param name="problems">Takes what is wrong.</param>
    public static ColumnMap? Read(
        RowText heading, IReadOnlyDictionary<string, string> columns, string[] required, string expected, List<Diagnostic> problems)
    {
        if (heading.Cells.Any(cell => cell.Flaw != CellFlaw.None))
        {
            problems.Add(RowProblems.Of(heading, heading.Cells.Count));
            return null;
        }

        if (heading.Cells.Count == 1 && heading.Text.AsSpan().ContainsAny(';', '\t'))
        {
            problems.Add(HeadingProblems.OtherSeparator(heading));
            return null;
        }

        var map = new ColumnMap(heading.Cells.Count);
        for (var cell = 0; cell < heading.Cells.Count; cell++)
        {
            map.Place(heading, cell, columns, expected, problems);
        }

        string[] missing = [.. required.Where(column => !map._cells.ContainsKey(column))];
        if (missing.Length > 0)
        {
            problems.Add(HeadingProblems.MissingColumns(heading, missing, required));
        }

        return required.All(column => map[column] >= 0) ? map : null;
    }

    /// <summary>A head as columns are compared: folded, <c>_</c> as a space.</summary>
    public static string Fold(string head) => NameFolding.Fold(head.Replace('_', ' '));

    /// <summary>Names in a sentence: <c>`a`, `b` and `c`</c>.</summary>
    public static string Listed(IReadOnlyList<string> names, string last) => names.Count == 1
        ? $"`{names[0]}`"
        : $"{string.Join(", ", names.Take(names.Count - 1).Select(name => $"`{name}`"))} {last} `{names[^1]}`";

    private void Place(RowText heading, int cell, IReadOnlyDictionary<string, string> columns, string expected, List<Diagnostic> problems)
    {
        var head = heading.Cells[cell].Value;
        if (!columns.TryGetValue(Fold(head), out var column))
        {
            _unknown.Add(cell);
            _unknownHeads.Add(head);
            var nearest = head.Length == 0 ? null : NearestName.OnlyOne(head, columns.Keys);
            problems.Add(HeadingProblems.UnknownColumn(heading, cell, expected, nearest));
        }
        else if (!_cells.TryAdd(column, cell))
        {
            _doubled.Add(column);
            problems.Add(HeadingProblems.DuplicateColumn(heading, cell, column));
        }
    }
}
