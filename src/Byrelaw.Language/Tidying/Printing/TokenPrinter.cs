using System.Text;
using Byrelaw.Language.Blocks;
using Byrelaw.Language.Canonical;
using Byrelaw.Language.Grammar;
using Byrelaw.Language.Lexing;
using Byrelaw.Language.Tidying.Layouts;
using Byrelaw.Language.Units;

namespace Byrelaw.Language.Tidying.Printing;

/// <summary>
/// A line that no other printer knows, word by word with one space between: what every line gets until it
/// has a printer of its own.
/// </summary>
internal static class TokenPrinter
{
    /// <summary>How it is set.</summary>
    /// <param name="line">The line, its declared names as one token each.</param>
    /// <param name="block">The block it stands in.</param>
    public static Layout Of(LogicalLine line, BlockKind block)
    {
        var tokens = line.Tokens;
        return tokens.Length > 1 && tokens[^1].Kind == TokenKind.Text
            ? new EndsWithText(Joined(tokens.AsSpan(..^1), block), tokens[^1].Text, RunsOn: !IsHead(tokens[0]))
            : new OneLine(Joined(tokens, block));
    }

    private static string Joined(ReadOnlySpan<Token> tokens, BlockKind block)
    {
        var line = new StringBuilder();
        for (var i = 0; i < tokens.Length; i++)
        {
            line.Append(i == 0 || tokens[i].Kind == TokenKind.Comma ? "" : " ").Append(Word(tokens, i, block));
        }

        return line.ToString();
    }

    private static string Word(ReadOnlySpan<Token> tokens, int at, BlockKind block)
    {
        var token = tokens[at];
        var isKeyword = ReservedWords.Holds(token.Folded)
            || (at == 0 && (IsHead(token) || LineTable.Bodies(block).ContainsKey(token.Folded)))
            || (at > 0 && tokens[at - 1].Kind == TokenKind.Number && TimeUnitWords.Find(token.Folded) is not null);
        return token.Kind switch
        {
            TokenKind.Word when isKeyword => token.Folded,
            TokenKind.Unit => UnitTable.Find(token.Text)?.Symbol ?? token.Text,
            TokenKind.Text => NameText.Text(token.Text),
            TokenKind.Word or TokenKind.Phrase => token.Text,
            _ => token.Span.Text,
        };
    }

    private static bool IsHead(Token token) => token.Kind == TokenKind.Word && LineTable.Heads.ContainsKey(token.Folded);
}
