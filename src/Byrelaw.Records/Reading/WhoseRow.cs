namespace Byrelaw.Records.Reading;

/// <summary>Finds the animal whose row a problem stands in.</summary>
/// <param name="animals">All animals.</param>
/// <param name="columns">The columns of the events' file; null for a row of the animals' file.</param>
internal sealed class WhoseRow(AnimalTable animals, EventColumns? columns)
{
    private Dictionary<string, int>? _byNumber;
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
        var cells = CellSplitter.Split(problem.LineText);
        return columns.Animal < cells.Count ? _byNumber.GetValueOrDefault(cells[columns.Animal].Value, -1) : -1;
    }
}
