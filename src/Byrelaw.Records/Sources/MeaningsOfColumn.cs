namespace Byrelaw.Records.Sources;

/// <summary>Finds what a text of a column means.</summary>
internal sealed class MeaningsOfColumn
{
    // The same few texts stand in most cells of a column.
    private const int MostSeen = 4096;

    private readonly Dictionary<string, List<(int Column, string Cell, CellMeaning Meaning)>> _meanings = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<(int Column, string Cell, CellMeaning Meaning)>?> _seen = new(StringComparer.Ordinal);

    /// <summary>Takes the meanings of a column.</summary>
    public MeaningsOfColumn(SourceColumn column, SourceTable table)
    {
        foreach (var meaning in column.Cells)
        {
            var cell = NameFolding.Fold(meaning.Cell);
            if (!_meanings.TryGetValue(cell, out var list))
            {
                _meanings.Add(cell, list = []);
            }

            list.Add((meaning.Where is { } where ? table.Find(where.Heading) : -1, meaning.Where is { } said ? NameFolding.Fold(said.Cell) : "", meaning));
        }
    }

    /// <summary>The meaning of a cell; null where none is given. One that asks what another column says goes before one that does not.</summary>
    /// <param name="cell">The cell.</param>
    /// <param name="row">Its row.</param>
    /// <param name="areTwo">Whether two fit, so that nobody can tell which is meant.</param>
    public CellMeaning? Find(string cell, SourceRow row, out bool areTwo)
    {
        areTwo = false;
        if (_meanings.Count == 0 || Of(cell) is not { } list)
        {
            return null;
        }

        CellMeaning? found = null;
        foreach (var (column, said, meaning) in list)
        {
            if (meaning.Where is null)
            {
                found ??= meaning;
            }
            else if (TranslatedSource.Text(row, column) is var other && Unreadable.Is(other))
            {
                // Whether it is meant hangs on what cannot be read.
                areTwo = true;
            }
            else if (NameFolding.Fold(other) == said)
            {
                areTwo |= found?.Where is not null;
                found = meaning;
            }
        }

        return found;
    }

    private List<(int Column, string Cell, CellMeaning Meaning)>? Of(string cell)
    {
        if (!_seen.TryGetValue(cell, out var list))
        {
            list = _meanings.GetValueOrDefault(NameFolding.Fold(cell));
            if (_seen.Count < MostSeen)
            {
                _seen.Add(cell, list);
            }
        }

        return list;
    }
}
