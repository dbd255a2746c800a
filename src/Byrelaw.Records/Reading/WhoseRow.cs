namespace Byrelaw.Records.Reading;

/// <summary>Finds the animal whose row a problem stands in.</summary>
/// <param name="animals">All animals.</param>
/// <param name="columns">The columns of the events' file; null for a row of the animals' file.</param>
internal sealed class WhoseRow(AnimalTable animals, EventColumns? columns)
{
    private Dictionary<string, int>? _byNumber;
    private Dictionary<string, int>.AlternateLookup<ReadOnlySpan<char>>? _bySpan;
    private Dictionary<int, int>? _byLine;

    /// <summary>The animal; -1 where that cannot be read, or the row is about several.</summary>
    public int Of(Diagnostic problem)
    {
        if (columns is null)
        {
            _byLine ??= Enumerable.Range(0, animals.Rows.Length).ToDictionary(animal => animals.Rows[animal].Line);
            return _byLine.GetValueOrDefault(problem.Line, -1);
        }

        _byNumber ??= Enumerable.Range(0, animals.Numbers.Length).ToDictionary(animal => animals.Numbers[animal], StringComparer.Ordinal);
        if (!problem.LineText.Contains('"', StringComparison.Ordinal))
        {
            _bySpan ??= _byNumber.GetAlternateLookup<ReadOnlySpan<char>>();
            return Plain(problem.LineText, columns.Animal) is { IsEmpty: false } number && _bySpan.Value.TryGetValue(number, out var found) ? found : -1;
        }

        var cells = CellSplitter.Split(problem.LineText);
        return columns.Animal < cells.Count ? _byNumber.GetValueOrDefault(cells[columns.Animal].Value, -1) : -1;
    }

    /// <summary>A cell of a line without quotation marks; empty where there is none.</summary>
    private static ReadOnlySpan<char> Plain(ReadOnlySpan<char> line, int cell)
    {
        for (; cell > 0; cell--)
        {
            if (line.IndexOf(',') is not (>= 0 and var comma))
            {
                return [];
            }

            line = line[(comma + 1)..];
        }

        return (line.IndexOf(',') is >= 0 and var end ? line[..end] : line).Trim();
    }
}
