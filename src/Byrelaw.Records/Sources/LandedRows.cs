namespace Byrelaw.Records.Sources;

/// <summary>
/// Rows in the form of the landed files, made from sources: what reads those two files reads every source, so that one herd in
/// any form gives one set of answers. Each row knows where it came from.
/// </summary>
/// <param name="headings">The columns.</param>
internal sealed class LandedRows(IReadOnlyList<string> headings)
{
    private readonly StringBuilder _text = Begin(headings);
    private readonly List<RowPlace> _places = [default, default];

    /// <summary>The columns.</summary>
    public IReadOnlyList<string> Headings { get; } = headings;

    /// <summary>By line of this text, from 1: where its row came from.</summary>
    public IReadOnlyList<RowPlace> Places => _places;

    /// <summary>The place of a column.</summary>
    public int Find(string heading)
    {
        for (var column = 0; column < Headings.Count; column++)
        {
            if (Headings[column] == heading)
            {
                return column;
            }
        }

        throw new ArgumentException($"no column {heading}", nameof(heading));
    }

    /// <summary>Adds a row; blank cells are null or empty.</summary>
    public void Add(RowPlace place, string?[] cells)
    {
        for (var column = 0; column < cells.Length; column++)
        {
            if (column > 0)
            {
                _text.Append(',');
            }

            Append(cells[column]);
        }

        _text.Append('\n');
        _places.Add(place);
    }

    /// <summary>Adds a row of which nothing but the first cell can be told.</summary>
    public void AddBroken(RowPlace place, string first)
    {
        Append(first);
        _text.Append('\n');
        _places.Add(place);
    }

    /// <summary>The whole text.</summary>
    public byte[] ToBytes() => Encoding.UTF8.GetBytes(_text.ToString());

    private static StringBuilder Begin(IReadOnlyList<string> headings) => new StringBuilder().AppendJoin(',', headings.Select(Quoted)).Append('\n');

    private void Append(string? cell)
    {
        if (cell is not null)
        {
            _text.Append(Quoted(cell));
        }
    }

    private static string Quoted(string cell)
    {
        var line = cell.AsSpan().ContainsAny('\n', '\r') ? cell.ReplaceLineEndings(" ") : cell;
        return line.AsSpan().ContainsAny(',', '"') ? $"\"{line.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : line;
    }
}

/// <summary>Where a row came from.</summary>
/// <param name="Source">The place of the source among all, from 0.</param>
/// <param name="Row">The row's number there; 0 for the source as a whole.</param>
internal readonly record struct RowPlace(int Source, int Row)
{
    /// <summary>The column of what it says happened, from 0; null where that is the whole row.</summary>
    public int? Column { get; init; }
}
