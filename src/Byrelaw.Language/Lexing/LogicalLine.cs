namespace Byrelaw.Language.Lexing;

/// <summary>A statement's tokens: one line, or several where texts run on.</summary>
/// <param name="Tokens">At least one; texts that follow each other are joined; no line ends.</param>
internal sealed record LogicalLine(Token[] Tokens)
{
    /// <summary>From the first token to the last.</summary>
    public SourceSpan Span => Tokens[0].Span.To(Tokens[^1].Span);

    /// <summary>Whether any token is bad.</summary>
    public bool IsBad => Array.Exists(Tokens, token => token.Kind == TokenKind.Bad);

    /// <summary>The folded word at a place; empty where no word stands there.</summary>
    public string WordAt(int place) => place < Tokens.Length && Tokens[place].Kind == TokenKind.Word ? Tokens[place].Folded : "";
}
