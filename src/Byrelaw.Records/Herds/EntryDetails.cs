namespace Byrelaw.Records.Herds;

/// <summary>One detail of one entry, as far as it is on record; a blank cell is not here.</summary>
/// <param name="Line">The entry's line of <c>events.csv</c>.</param>
/// <param name="Detail">The place among the <see cref="Kind.Details"/> of the entry's kind.</param>
/// <param name="State"><see cref="FactState.Unreadable"/> where something stands there that could not be read.</param>
/// <param name="Number">A number, an amount in the declared unit, or a date as a day number; 0 for the others.</param>
/// <param name="Text">A text, an identity, or the declared spelling of a value; null for the others.</param>
public readonly record struct DetailCell(int Line, int Detail, FactState State, double Number, string? Text);

/// <summary>What more is on record of entries, by their line: by which method she was scanned, which bull served her. Most entries have
/// nothing here.</summary>
public sealed class EntryDetails
{
    /// <summary>Nothing.</summary>
    public static readonly EntryDetails None = new([]);

    private readonly DetailCell[] _cells;
    private ImmutableArray<BlankOf> _blanks = [];
    private Func<Kind, int, bool> _hasColumn = (_, _) => true;

    /// <summary>Takes cells in any order.</summary>
    public EntryDetails(DetailCell[] cells)
    {
        ArgumentNullException.ThrowIfNull(cells);
        _cells = cells;
        Sort();
    }

    /// <summary>Takes what the farm says that blank cells mean, and for which details there is a column.</summary>
    public void Fill(ImmutableArray<BlankOf> blanks, Func<Kind, int, bool> hasColumn) => (_blanks, _hasColumn) = (blanks, hasColumn);

    /// <summary>Whether there is a column for a detail, so that a blank cell says that nothing was written down.</summary>
    public bool HasColumn(Kind kind, int detail) => _hasColumn(kind, detail);

    /// <summary>What a blank cell of a detail means in these records; null where the farm does not say.</summary>
    public string? BlankOf(Kind kind, int detail)
    {
        foreach (var blank in _blanks)
        {
            if (blank.Kind.Id == kind.Id && blank.Place == detail)
            {
                return blank.Value;
            }
        }

        return null;
    }

    /// <summary>Gives the entries other lines: those of the text that made-up records are written in.</summary>
    public void Renumber(Func<int, int> line)
    {
        ArgumentNullException.ThrowIfNull(line);
        foreach (ref var cell in _cells.AsSpan())
        {
            cell = cell with { Line = line(cell.Line) };
        }

        Sort();
    }

    private void Sort() =>
        Array.Sort(_cells, static (one, other) => one.Line != other.Line ? one.Line.CompareTo(other.Line) : one.Detail.CompareTo(other.Detail));

    /// <summary>The details of the entry on a line, in the order of their declaration.</summary>
    public ReadOnlySpan<DetailCell> Of(int line)
    {
        var from = First(line);
        var to = from;
        while (to < _cells.Length && _cells[to].Line == line)
        {
            to++;
        }

        return _cells.AsSpan(from, to - from);
    }

    /// <summary>One detail of the entry on a line; <see cref="FactState.Missing"/> where the cell is blank or there is no such column.</summary>
    public DetailCell Of(int line, int detail)
    {
        foreach (var cell in Of(line))
        {
            if (cell.Detail == detail)
            {
                return cell;
            }
        }

        return new DetailCell(line, detail, FactState.Missing, 0, null);
    }

    private int First(int line)
    {
        var (low, high) = (0, _cells.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = _cells[middle].Line < line ? (middle + 1, high) : (low, middle);
        }

        return low;
    }
}
