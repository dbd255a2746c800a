namespace Byrelaw.Language.Lexing;

/// <summary>One file as tokens and comments.</summary>
/// <param name="File">Whose.</param>
/// <param name="Tokens">In order; every line ends with an <see cref="TokenKind.EndOfLine"/>, the file with an
/// <see cref="TokenKind.EndOfFile"/>.</param>
/// <param name="Comments">In order; each is owned by the token after it.</param>
internal sealed record LexedFile(SourceFile File, IReadOnlyList<Token> Tokens, IReadOnlyList<SourceSpan> Comments);
