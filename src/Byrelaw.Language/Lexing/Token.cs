namespace Byrelaw.Language.Lexing;

/// <summary>A word, number, text or sign of a rule file.</summary>
internal sealed record Token(TokenKind Kind, SourceSpan Span)
{
    /// <summary>A word as written, a text without its quotes, a number as written.</summary>
    public string Text { get; init; } = "";

    /// <summary>Words and phrases in the form in which they are compared; empty for the others.</summary>
    public string Folded { get; init; } = "";

    /// <summary>The value of a number or a per cent.</summary>
    public double Number { get; init; }

    /// <summary>The value of a date.</summary>
    public LocalDate Date { get; init; }

    /// <summary>What is wrong with a <see cref="TokenKind.Bad"/> token.</summary>
    public Diagnostic? Problem { get; init; }

    /// <summary>The place of the first comment between the token before and this one.</summary>
    public int FirstComment { get; init; }

    /// <summary>How many comments stand there; no other token owns them.</summary>
    public int CommentCount { get; init; }

    /// <summary>Whether this is that word, in any case.</summary>
    public bool Is(string word) => Kind == TokenKind.Word && Folded == word;

    /// <summary>Whether this is the same word, number or comma as another: in a row, no line has a use for the second.</summary>
    public bool Repeats(Token other) =>
        Kind == other.Kind && Kind is TokenKind.Word or TokenKind.Unit or TokenKind.Number or TokenKind.Percent or TokenKind.Date or TokenKind.Comma
        && Folded == other.Folded && Text == other.Text;

    /// <summary>Whether this can be part of a name: a free word, a declared phrase, a text.</summary>
    public bool IsNamePart => Kind is TokenKind.Phrase or TokenKind.Text || (Kind == TokenKind.Word && !LanguageWords.EndName(Folded));
}
