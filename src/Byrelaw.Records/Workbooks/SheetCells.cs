namespace Byrelaw.Records.Workbooks;

/// <summary>Which cells of a sheet hold something, by row and column from 0. A sheet of three cells may say that it is a million rows long and thousands of columns wide: only these cells are asked for.</summary>
internal sealed class SheetCells
{
    // As many rows as spreadsheets have, and more columns than a herd's sheet needs.
    private const int MostRows = 1 << 20;
    private const int MostColumns = 4096;

    private readonly Dictionary<(int Row, int Column), string> _flaws = [];
    private readonly Dictionary<int, int> _last = [];

    /// <summary>Why the sheet is not read; null where it keeps within the bounds.</summary>
    public string? Exceeded { get; private set; }

    /// <summary>How many rows there are, the blank ones between others too.</summary>
    public int Rows { get; private set; }

    /// <summary>Adds one.</summary>
    /// <param name="row">From 0.</param>
    /// <param name="column">From 0.</param>
    /// <param name="flaw">What stands there that is no value; null for a value.</param>
    public void Add(int row, int column, string? flaw)
    {
        Exceeded ??= row >= MostRows ? $"a sheet has more than {MostRows} rows" : column >= MostColumns ? $"a sheet has more than {MostColumns} columns" : null;
        if (Exceeded is not null || row < 0 || column < 0)
        {
            return;
        }

        Rows = Math.Max(Rows, row + 1);
        _last[row] = Math.Max(_last.GetValueOrDefault(row), column);
        if (flaw is not null)
        {
            _flaws[(row, column)] = flaw;
        }
    }

    /// <summary>How many columns of a row hold something, the blank ones between others too.</summary>
    public int WidthOf(int row) => _last.TryGetValue(row, out var last) ? last + 1 : 0;

    /// <summary>What stands in a cell that is no value; null for a value, or for nothing.</summary>
    public string? FlawOf(int row, int column) => _flaws.Count > 0 ? _flaws.GetValueOrDefault((row, column)) : null;
}
