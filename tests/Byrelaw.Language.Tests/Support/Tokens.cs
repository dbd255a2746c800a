namespace Byrelaw.Language.Tests.Support;

/// <summary>Lexes what a test writes out.</summary>
internal static class Tokens
{
    public static LexedFile Lex(string text) => Lexer.Lex(new SourceFile("rules.byre", text));

    /// <summary>The tokens that are not ends, as <c>Kind text</c>.</summary>
    public static string Kinds(string text) => string.Join(" | ", Lex(text).Tokens
        .Where(token => token.Kind is not (TokenKind.EndOfLine or TokenKind.EndOfFile))
        .Select(token => $"{token.Kind} {(token.Text.Length > 0 ? token.Text : token.Span.Text)}"));

    /// <summary>The statements of a text, as their tokens' texts.</summary>
    public static string[] Statements(string text) =>
        [.. LineSplitter.Split(Lex(text)).Select(line => string.Join(' ', line.Tokens.Select(token => token.Text.Length > 0 ? token.Text : token.Span.Text)))];
}
