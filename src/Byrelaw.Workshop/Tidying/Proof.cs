namespace Byrelaw.Workshop.Tidying;

/// <summary>
/// Holds the tidied text to what was written, each time: the same rulebook, the same comments in the same order, and in
/// lines whose words tidying does not touch the same words.
/// </summary>
/// <param name="Rulebook">What the file and all it uses say.</param>
/// <param name="File">The file itself.</param>
internal sealed record Proof(Rulebook Rulebook, WrittenFile File)
{
    /// <summary>What is held of a reading.</summary>
    public static Proof Of(RulebookReading reading) => new(reading.Rulebook, WrittenFile.Of(reading.Parts!.Files[0], reading.Parts));

    /// <summary>What differs, in words; null where nothing does.</summary>
    public static string? Difference(Proof before, Proof after) =>
        CanonicalText.Of(before.Rulebook) != CanonicalText.Of(after.Rulebook) ? "what the rules say"
        : !before.Comments.SequenceEqual(after.Comments) ? "its comments"
        : !before.Words.SequenceEqual(after.Words) ? "words that are not part of the rules"
        : null;

    private IEnumerable<string> Comments => File.Comments.Select(comment => ComposedText.Of(comment.Text));

    /// <summary>
    /// The words of every line but conditions and declarations, whose words may change and which the canonical text
    /// holds. It leaves out paths and whatever else is not judged by, so that is held here.
    /// </summary>
    private IEnumerable<string> Words => File.Statements
        .Where(statement => statement.Syntax is not (NeedsLine or SuitsLine or ConditionLine or BulletLine or DeclarationLine))
        .Select(statement => string.Join(' ', statement.Line.Tokens.Select(Word)))
        .Order(StringComparer.Ordinal);

    private static string Word(Token token) => token.Kind switch
    {
        TokenKind.Word => TimeUnitWords.Find(token.Folded)?.ToString() ?? token.Folded,
        TokenKind.Unit => UnitTable.Find(token.Text)?.Symbol ?? token.Text,
        TokenKind.Text => NameText.Text(token.Text),
        TokenKind.Number => NumberText.Of(token.Number),
        _ => token.Span.Text,
    };
}
