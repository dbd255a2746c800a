namespace Byrelaw.Workshop.Tests.Tidying;

/// <summary>Says the same as a rule file, written as carelessly as can be.</summary>
/// <param name="random">Where the carelessness comes from.</param>
internal sealed class Mangled(Random random)
{
    private const string Wide = "\u00a0\t  ";

    private readonly StringBuilder _text = new();
    private int _comments;

    /// <summary>Other indents, more space between words, other line ends.</summary>
    public static string Spaces(string text, Random random) => new Mangled(random).Of(text, isWild: false);

    /// <summary>Also other capitals, texts in pieces, empty lines, and comments wherever they may stand.</summary>
    public static string Wildly(string text, Random random) => new Mangled(random).Of(text, isWild: true);

    private bool Sometimes => random.Next(5) == 0;

    private string Of(string text, bool isWild)
    {
        var end = Sometimes ? "\r\n" : "\n";
        _text.Append(Sometimes ? "\uFEFF" : "");
        var lexed = Lexer.Lex(new SourceFile("", text));
        var tokens = lexed.Tokens;
        for (var i = 0; i < tokens.Count; i++)
        {
            foreach (var comment in lexed.Comments.Skip(tokens[i].FirstComment).Take(tokens[i].CommentCount))
            {
                _text.Append(comment.Column == 1 ? "" : Space(1)).Append(comment.Text);
            }

            if (IsEnd(tokens[i]))
            {
                End(end, isWild);
                continue;
            }

            var between = isWild && IsEnd(tokens[i + 1]) ? end : "";
            _text.Append(Space(tokens[i].Kind == TokenKind.Comma ? 0 : 1)).Append(isWild ? Wild(tokens[i], between) : tokens[i].Span.Text);
        }

        return _text.ToString();
    }

    private void End(string end, bool isWild)
    {
        _text.Append(Space(0)).Append(isWild && Sometimes ? Comment() : "").Append(end);
        while (isWild && Sometimes)
        {
            _text.Append(Space(0)).Append(Sometimes ? Comment() : "").Append(end);
        }
    }

    private string Wild(Token token, string end)
    {
        var text = token.Span.Text;
        return token.Kind switch
        {
            TokenKind.Word or TokenKind.Unit when Sometimes => text.ToUpperInvariant(),
            TokenKind.Word when Sometimes => char.ToUpperInvariant(text[0]) + text[1..],
            TokenKind.Text when Sometimes && !RepeatsAWord(text) => string.Concat(text.Split(' ').Select((piece, i) => i == 0 ? piece : $"\"{Between(end)}\"{piece}")),
            _ => text,
        };
    }

    /// <summary>What stands between two pieces of a text: one that ends its line may run over to the next.</summary>
    private string Between(string end) => end.Length > 0 && Sometimes ? $"{Space(0)}{(Sometimes ? Comment() : "")}{end}{Space(0)}" : Space(0);

    private static bool IsEnd(Token token) => token.Kind is TokenKind.EndOfLine or TokenKind.EndOfFile;

    /// <summary>Cut between a word and the same word again, a text would stand twice in a row, which is a mistake.</summary>
    private static bool RepeatsAWord(string text)
    {
        var words = text.Trim('"').Split(' ');
        return words.Zip(words.Skip(1)).Any(pair => pair.First == pair.Second);
    }

    private string Comment() => $"#{Space(0)}{++_comments} \"quoted\"{Space(0)}";

    private string Space(int atLeast) => string.Concat(Enumerable.Range(0, atLeast + (Sometimes ? random.Next(6) : 0)).Select(_ => Wide[random.Next(Wide.Length)]));
}
