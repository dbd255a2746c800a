namespace Byrelaw.Records.Animals;

/// <summary>
/// Columns whose heading nobody knows, in a file without one for the parity: one that holds nothing but small whole numbers may be it, under
/// another name. What it says is not read; but a parity that is higher than the calvings on record must not go unseen with its heading.
/// </summary>
internal sealed class MayBeParity(IReadOnlyList<int> columns, int most)
{
    private readonly List<int>[] _above0 = [.. columns.Select(_ => new List<int>())];
    private readonly bool[] _isOther = new bool[columns.Count];

    /// <summary>Looks at one row.</summary>
    /// <param name="row">The row.</param>
    /// <param name="place">Of the animal in the stage.</param>
    public void Read(CsvRows row, int place)
    {
        for (var i = 0; i < columns.Count; i++)
        {
            var cell = row.Cell(columns[i]);
            if (cell.IsEmpty || _isOther[i])
            {
                continue;
            }

            if (!int.TryParse(cell, NumberStyles.None, CultureInfo.InvariantCulture, out var number) || number > most)
            {
                _isOther[i] = true;
            }
            else if (number > 0)
            {
                _above0[i].Add(place);
            }
        }
    }

    /// <summary>The animals of which such a column says more than 0.</summary>
    public IEnumerable<int> Places => _above0.Where((_, i) => !_isOther[i]).SelectMany(places => places).Distinct();
}
