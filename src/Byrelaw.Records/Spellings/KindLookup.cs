namespace Byrelaw.Records.Spellings;

/// <summary>Finds kinds by any of their names as they stand in the file. For one thread.</summary>
internal sealed class KindLookup(Vocabulary vocabulary, IEnumerable<string> leaveOut)
{
    /// <summary>Nobody declares it.</summary>
    public const int Undeclared = -1;

    /// <summary>Nobody declares it, and nobody minds.</summary>
    public const int LeftOut = -2;

    private readonly SpellingTable _known = new();
    private readonly HashSet<string> _leaveOut = [.. leaveOut.Select(NameFolding.Fold)];

    /// <summary>The kind's id, <see cref="Undeclared"/> or <see cref="LeftOut"/>.</summary>
    public int Find(ReadOnlySpan<byte> spelling)
    {
        if (!_known.TryFind(spelling, out var kind))
        {
            kind = Find(Encoding.UTF8.GetString(spelling));
            _known.Set(spelling, kind);
        }

        return kind;
    }

    /// <summary>The same for a text.</summary>
    public int Find(string name) =>
        vocabulary.FindKind(name) is { } declared ? declared.Id
        : _leaveOut.Contains(NameFolding.Fold(name)) ? LeftOut
        : Undeclared;
}
