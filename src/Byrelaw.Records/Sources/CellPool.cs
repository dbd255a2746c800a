namespace Byrelaw.Records.Sources;

/// <summary>Texts of cells, each kept once: the same few days, numbers and words stand in most cells of a table.</summary>
internal sealed class CellPool
{
    private const int Most = 1 << 16;
    private const int Longest = 32;

    private readonly Dictionary<string, string> _kept = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string>.AlternateLookup<ReadOnlySpan<char>> _find;

    /// <summary>Starts with none.</summary>
    public CellPool() => _find = _kept.GetAlternateLookup<ReadOnlySpan<char>>();

    /// <summary>The text.</summary>
    public string Of(ReadOnlySpan<char> cell)
    {
        if (cell.IsEmpty)
        {
            return "";
        }

        if (cell.Length > Longest)
        {
            return cell.ToString();
        }

        if (_find.TryGetValue(cell, out var kept))
        {
            return kept;
        }

        var text = cell.ToString();
        if (_kept.Count < Most)
        {
            _kept.Add(text, text);
        }

        return text;
    }
}
