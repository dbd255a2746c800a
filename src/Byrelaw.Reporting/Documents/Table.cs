namespace Byrelaw.Reporting.Documents;

/// <summary>A table with a caption. Every row has as many cells as the heading.</summary>
/// <param name="Caption">What it is about.</param>
/// <param name="Columns">Left to right.</param>
public sealed record Table(string Caption, params ImmutableArray<Column> Columns) : Element
{
    private readonly List<Wording[]> _rows = [];

    /// <summary>Whether it is worked by in the yards, on paper first: numbers that are read from afar, boxes to tick, lines to write on.</summary>
    public bool IsForTheYards { get; init; }

    /// <summary>The rows.</summary>
    public IReadOnlyList<IReadOnlyList<Wording>> Rows => _rows;

    /// <summary>Whether there is any row.</summary>
    public bool IsEmpty => _rows.Count == 0;

    /// <summary>Adds a row.</summary>
    /// <exception cref="ArgumentException">It has another number of cells than the heading.</exception>
    public void Add(params Wording[] cells)
    {
        if (cells.Length != Columns.Length)
        {
            throw new ArgumentException($"A row of {cells.Length} cells in a table of {Columns.Length} columns.", nameof(cells));
        }

        _rows.Add(cells);
    }
}
