namespace Byrelaw.Workshop.Correcting;

/// <summary>The language's own words, of which one may be missing.</summary>
internal static class WordsLeftOut
{
    private static readonly ImmutableArray<string> InLines = LanguageWords.With(WordRole.InLines);
    private static readonly ImmutableArray<string> InDeclarations = LanguageWords.With(WordRole.InDeclarations);

    /// <summary>Whether a word may be missing after another: some stand in fixed phrases only, and would pass for a name elsewhere.</summary>
    public static bool Follows(string word, string before) => word switch
    {
        "the" => before is "in" or "of" or "on" or "joins" or "leaves",
        "her" => before == "of",
        "one" => before is "is" or "not",
        "scale" => before == "on",
        "mass" => before == "molar",
        "mob" => before == "her",
        "herd" => before == "the",
        "known" => before == "not",
        "to" => before is "applies" || (before.Length > 0 && !char.IsLetter(before[0])) || before is "collection" or "transfer",
        "over" => before.EndsWith(',') || before == "collection",
        "animals" or "days" => before.Length > 0 && char.IsDigit(before[0]),
        _ => true,
    };

    /// <summary>Every word that means something: the language's own, and those of declared names.</summary>
    public static IReadOnlySet<string> Known(Namespace names, BlockKind? kind) =>
        names.All.SelectMany(name => name.Spelling.Split(' ')).Concat(At(0, kind)).Append("ever").ToHashSet(StringComparer.OrdinalIgnoreCase);

    /// <summary>Whether a line with this first word is known for what it is.</summary>
    public static bool StartsLine(string word, BlockKind? kind) => LineTable.Heads.ContainsKey(word) || (kind is { } block && LineTable.Bodies(block).ContainsKey(word));

    /// <summary>The words that may stand at a place (from 0) of a line.</summary>
    /// <param name="place">0 for the line's first word.</param>
    /// <param name="kind">What block the line stands in; null for none.</param>
    public static IEnumerable<string> At(int place, BlockKind? kind)
    {
        if (place > 0)
        {
            return kind == BlockKind.Word ? InDeclarations : InLines;
        }

        var ownLines = kind is { } block ? LineTable.Bodies(block).Keys : [];
        var heads = LineTable.Heads.Where(head => head.Value.Grammar is not null).Select(head => head.Key);
        return [.. LineTable.TakesBullets(kind ?? BlockKind.Use) ? ["-"] : Array.Empty<string>(), .. ownLines.Order(StringComparer.Ordinal), .. heads.Order(StringComparer.Ordinal), .. InLines];
    }
}
