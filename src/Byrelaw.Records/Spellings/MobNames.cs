namespace Byrelaw.Records.Spellings;

/// <summary>Gives every mob a number as its name is first met, from any thread. Names that nobody can tell apart by looking are one mob's: else a bull
/// would stand alone in the other. Of several spellings of one name the one that sorts first is kept, whichever thread meets it.</summary>
internal sealed class MobNames
{
    private readonly Lock _gate = new();
    private readonly Dictionary<string, int> _byFoldedName = new(StringComparer.Ordinal);
    private readonly List<string> _names = [];

    /// <summary>The names so far; a mob's number is its place.</summary>
    public IReadOnlyList<string> Names => _names;

    /// <summary>The number of the mob with this name.</summary>
    public int NumberOf(ReadOnlySpan<byte> spelling)
    {
        var name = Encoding.UTF8.GetString(spelling);
        var alike = AlikeText.OfMob(name);
        var folded = alike.Length > 0 ? alike : NameFolding.Fold(name);
        lock (_gate)
        {
            if (!_byFoldedName.TryGetValue(folded, out var number))
            {
                number = _names.Count;
                _byFoldedName.Add(folded, number);
                _names.Add(name);
            }
            else if (string.CompareOrdinal(name, _names[number]) < 0)
            {
                _names[number] = name;
            }

            return number;
        }
    }
}
