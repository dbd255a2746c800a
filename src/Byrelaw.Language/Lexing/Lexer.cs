namespace Byrelaw.Language.Lexing;

/// <summary>
/// Cuts a text into tokens. Everything becomes some token or comment: what no line may hold
/// becomes a <see cref="TokenKind.Bad"/> token that carries its problem, so that a part of a file that this
/// version does not use can be skipped without a word.
/// </summary>
internal sealed class Lexer
{
    private readonly SourceFile _file;
    private readonly string _text;
    private readonly List<Token> _tokens = [];
    private readonly List<SourceSpan> _comments = [];
    private int _at;
    private int _firstComment;
    private bool _lineHasTokens;

    private Lexer(SourceFile file)
    {
        _file = file;
        _text = file.Text;
    }

    /// <summary>Reads a whole file; never fails.</summary>
    public static LexedFile Lex(SourceFile file)
    {
        var lexer = new Lexer(file);
        while (lexer._at < lexer._text.Length)
        {
            lexer.Step();
        }

        lexer.Add(new Token(TokenKind.EndOfFile, new SourceSpan(file, lexer._at, 0)));
        return new LexedFile(file, lexer._tokens, lexer._comments);
    }

    private void Step()
    {
        var c = _text[_at];
        if (c == '\n' || (c == '\r' && Next == '\n'))
        {
            Add(new Token(TokenKind.EndOfLine, new SourceSpan(_file, _at, c == '\n' ? 1 : 2)));
            _lineHasTokens = false;
        }
        else if (c != '\r' && char.IsWhiteSpace(c))
        {
            _at++;
        }
        else if (c == '#')
        {
            Comment();
        }
        else
        {
            Add(Read(c));
            _lineHasTokens = true;
        }
    }

    private char Next => _at + 1 < _text.Length ? _text[_at + 1] : ' ';

    private Token Read(char c) => c switch
    {
        '"' => TextScanner.Read(_file, _at),
        ',' => new Token(TokenKind.Comma, new SourceSpan(_file, _at, 1)),
        '-' when !_lineHasTokens && char.IsWhiteSpace(Next) => new Token(TokenKind.Bullet, new SourceSpan(_file, _at, 1)),
        >= '0' and <= '9' => NumberScanner.Read(_file, _at),
        '-' when char.IsAsciiDigit(Next) => NumberScanner.Read(_file, _at),
        _ => WordScanner.Starts(_text, _at) ? WordScanner.Read(_file, _at) : SignScanner.Read(_file, _at, !_lineHasTokens),
    };

    private void Comment()
    {
        var end = _text.AsSpan(_at).IndexOfAny('\r', '\n');
        end = end < 0 ? _text.Length : _at + end;
        while (UnseenSigns.First(_text.AsSpan(_at, end - _at)) is >= 0 and var unseen)
        {
            Comment(unseen);
            var sign = new SourceSpan(_file, _at + unseen, 1);
            Add(new Token(TokenKind.Bad, sign) { Problem = TextProblems.UnseenSign(sign) });
            _lineHasTokens = true;
        }

        Comment(end - _at);
        _at = end;
    }

    /// <summary>A comment, or the part of one before or after a sign that may not stand in it.</summary>
    private void Comment(int length)
    {
        if (length > 0)
        {
            _comments.Add(new SourceSpan(_file, _at, length));
        }
    }

    private void Add(Token token)
    {
        _tokens.Add(_comments.Count == _firstComment ? token : token with { FirstComment = _firstComment, CommentCount = _comments.Count - _firstComment });
        _firstComment = _comments.Count;
        _at = token.Span.End;
    }
}
