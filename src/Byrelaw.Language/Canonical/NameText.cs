namespace Byrelaw.Language.Canonical;

/// <summary>Names and texts the one way: a name stands in quotes where one of its words may be read as something else.</summary>
public static class NameText
{
    private static readonly FrozenSet<string> Heads = LineTable.Heads.Keys
        .Concat(LineTable.Bodies(BlockKind.Unreadable).Keys).ToFrozenSet(StringComparer.Ordinal);

    /// <summary>As it can be read back inside a line.</summary>
    public static string Exact(string name) => NeedsQuotes(name, startsLine: false) ? Text(name) : name;

    /// <summary>As it can be read back where a line may start with it.</summary>
    public static string ExactAtStart(string name) => NeedsQuotes(name, startsLine: true) ? Text(name) : name;

    /// <summary>A text in quotes.</summary>
    public static string Text(string text) =>
        "\"" + text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal) + "\"";

    /// <summary>Names sorted as they are compared.</summary>
    public static IEnumerable<string> Sorted(IEnumerable<string> names) => names.OrderBy(NameFolding.Fold, StringComparer.Ordinal);

    private static bool NeedsQuotes(string name, bool startsLine)
    {
        var tokens = Lexer.Lex(new SourceFile("", name)).Tokens;
        var words = tokens.Take(tokens.Count - 1).ToList();
        return words.Count == 0
            || words.Exists(word => word.Kind != TokenKind.Word || !word.IsNamePart || StartsClause(word.Folded))
            || TimeUnitWords.Find(words[0].Folded) is not null
            || (startsLine && Heads.Contains(words[0].Folded))
            || string.Join(' ', words.Select(word => word.Text)) != name;
    }

    // In a declaration `joins the herd` ends a name, though its words are free; so do others in the lines about records.
    private static bool StartsClause(string word) => word is "joins" or "leaves" or "molar" or "are" or "comes" or "may" or "which";
}
