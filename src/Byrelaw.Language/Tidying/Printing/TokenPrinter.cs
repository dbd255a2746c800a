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
/// <param name="tokens">The line, its declared names as one token each.</param>
/// <param name="block">The block it stands in.</param>
/// <param name="hasNames">Whether free words may be people's own; else all are the language's.</param>
internal sealed class TokenPrinter(Token[] tokens, BlockKind block, bool hasNames)
{
    /// <summary>How the line is set.</summary>
    public Layout Print() => tokens.Length > 1 && tokens[^1].Kind == TokenKind.Text
        ? new EndsWithText(Joined(tokens.Length - 1), tokens[^1].Text, RunsOn: !IsHead(tokens[0]))
        : new OneLine(Joined(tokens.Length));

    private string Joined(int count)
    {
        var line = new StringBuilder();
        for (var i = 0; i < count; i++)
        {
            line.Append(i == 0 || tokens[i].Kind == TokenKind.Comma ? "" : " ").Append(Word(i));
        }

        return line.ToString();
    }

    private string Word(int at) => tokens[at].Kind switch
    {
        TokenKind.Word when IsKeyword(at) => tokens[at].Folded,
        TokenKind.Word or TokenKind.Phrase => tokens[at].Text,
        TokenKind.Unit => UnitTable.Find(tokens[at].Text)?.Symbol ?? tokens[at].Text,
        TokenKind.Text => NameText.Text(tokens[at].Text),
        _ => tokens[at].Span.Text,
    };

    private bool IsKeyword(int at)
    {
        var word = tokens[at];
        return !hasNames || ReservedWords.Holds(word.Folded)
            || (at == 0 && (IsHead(word) || LineTable.Bodies(block).ContainsKey(word.Folded)))
            || (at > 0 && tokens[at - 1].Kind == TokenKind.Number && TimeUnitWords.Find(word.Folded) is not null);
    }

    private static bool IsHead(Token token) => token.Kind == TokenKind.Word && LineTable.Heads.ContainsKey(token.Folded);
}
