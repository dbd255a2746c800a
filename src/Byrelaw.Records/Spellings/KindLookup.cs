namespace Byrelaw.Records.Spellings;

/// <summary>Finds kinds by any of their names as they stand in the file. For one thread.</summary>
internal sealed class KindLookup(Vocabulary vocabulary, IReadOnlyList<string> leaveOut)
{
    /// <summary>Nobody declares it.</summary>
    public const int Undeclared = -1;

    private const int FirstLeftOut = -2;

    private readonly SpellingTable _known = new();
    private readonly ImmutableArray<string> _leaveOut = [.. leaveOut.Select(NameFolding.Fold)];

    /// <summary>Whether nobody declares it, and nobody minds.</summary>
    public static bool IsLeftOut(int kind) => kind <= FirstLeftOut;

    /// <summary>For one that is left out: its place among the words that are.</summary>
    public static int PlaceOfLeftOut(int kind) => FirstLeftOut - kind;

    /// <summary>The kind's id; less than 0 for <see cref="Undeclared"/> and for what is left out.</summary>
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
        : _leaveOut.IndexOf(NameFolding.Fold(name)) is >= 0 and var place ? FirstLeftOut - place
        : Undeclared;
}
