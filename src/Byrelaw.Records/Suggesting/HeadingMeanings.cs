namespace Byrelaw.Records.Suggesting;

/// <summary>What a heading may mean by the words of a rulebook.</summary>
/// <param name="vocabulary">The words.</param>
internal sealed class HeadingMeanings(Vocabulary vocabulary)
{
    /// <summary>The words.</summary>
    public Vocabulary Vocabulary => vocabulary;

    /// <summary>Whether a heading is the name of a column of the landed files, or is known to stand for it.</summary>
    public bool IsHeaded(ColumnProfile column, string landed) =>
        HeadingHints.Find(column.Name) == landed && vocabulary.FindKind(column.Name) is null && vocabulary.FindFact(column.Name) is null;

    /// <summary>What a heading is said to mean by a declared name, or by the name of a landed column; null for no such name.</summary>
    public string? Declared(ColumnProfile column, IReadOnlyCollection<string> landed)
    {
        var name = NameFolding.Fold(column.Name.Replace('_', ' '));
        return landed.Contains(name) ? name : vocabulary.FindFact(name)?.Name ?? vocabulary.FindKind(name)?.Name;
    }

    /// <summary>What a heading may mean by a hint; null where none fits.</summary>
    public string? Hinted(ColumnProfile column) =>
        HeadingHints.Find(column.Name) ?? vocabulary.Hints.FirstOrDefault(hint => HintedWord.StandsIn(column.Name, hint.Word))?.Kind.Name;

    /// <summary>Whether a column holds official identities.</summary>
    public bool IsIdentity(ColumnProfile column) =>
        vocabulary.FindFact(column.Name) is { Type: FactType.Identity } || HeadingHints.Find(column.Name) == "official identity"
        || column.All(cell => cell.Count(char.IsAsciiDigit) >= 12);
}
