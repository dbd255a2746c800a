namespace Byrelaw.Language.Lexing;

/// <summary>Splits a file's tokens into statements.</summary>
internal sealed class LineSplitter
{
    /// <summary>What no statement that a person wrote comes near; longer ones are not read, so that none can take long.</summary>
    private const int MostTokens = 1000;

    private readonly List<LogicalLine> _lines = [];
    private readonly List<Token> _current = [];
    private readonly List<Token> _texts = [];
    private bool _isBad;

    private LineSplitter()
    {
    }

    /// <summary>
    /// A line of texts alone belongs to the statement before it where that ends with a text, or where
    /// that is bad anyway. Empty lines and comments between do not part them. A line on which more follows
    /// is a statement of its own: a condition may start with a name in quotes.
    /// </summary>
    public static List<LogicalLine> Split(LexedFile file)
    {
        var splitter = new LineSplitter();
        var startsLine = true;
        for (var i = 0; i < file.Tokens.Count; i++)
        {
            var token = file.Tokens[i];
            if (token.Kind is TokenKind.EndOfLine or TokenKind.EndOfFile)
            {
                startsLine = true;
                continue;
            }

            if (startsLine && !((splitter._texts.Count > 0 || splitter._isBad) && IsTextsAlone(file.Tokens, i)))
            {
                splitter.EndStatement();
            }

            startsLine = false;
            splitter.Add(token);
        }

        splitter.EndStatement();
        return splitter._lines;
    }

    private static bool IsTextsAlone(IReadOnlyList<Token> tokens, int at)
    {
        var end = at;
        while (tokens[end].Kind == TokenKind.Text)
        {
            end++;
        }

        return end > at && tokens[end].Kind is TokenKind.EndOfLine or TokenKind.EndOfFile;
    }

    private void Add(Token token)
    {
        if (token.Kind == TokenKind.Text)
        {
            _texts.Add(token);
            return;
        }

        JoinTexts();
        _current.Add(token);
        _isBad |= token.Kind == TokenKind.Bad;
    }

    /// <summary>One space between texts, however many people leave at the end of the first or the start of the second.</summary>
    private void JoinTexts()
    {
        if (_texts.Count == 0)
        {
            return;
        }

        if (Enumerable.Range(1, _texts.Count - 1).FirstOrDefault(IsTwice) is > 0 and var twice)
        {
            _current.Add(_texts[twice] with { Kind = TokenKind.Bad, Problem = TextProblems.TextTwice(_texts[twice].Span) });
            _isBad = true;
            _texts.Clear();
            return;
        }

        var text = _texts.Count == 1 ? _texts[0].Text : string.Join(' ', _texts.Select(part => part.Text.Trim(' ')));
        _current.Add(_texts[0] with { Span = _texts[0].Span.To(_texts[^1].Span), Text = text });
        _texts.Clear();
    }

    // On one line only: a long text that repeats itself may break into equal parts.
    private bool IsTwice(int at) =>
        _texts[at].Text == _texts[at - 1].Text && _texts[at].Text.Length > 0 && _texts[at].Span.Line == _texts[at - 1].Span.Line;

    private void EndStatement()
    {
        JoinTexts();
        if (_current.Count > MostTokens)
        {
            var first = _current[MostTokens];
            _current.RemoveRange(MostTokens, _current.Count - MostTokens);
            _current.Add(first with { Kind = TokenKind.Bad, Problem = TextProblems.LineTooLong(first.Span, MostTokens) });
        }

        if (_current.Count > 0)
        {
            _lines.Add(new LogicalLine([.. _current]));
        }

        _current.Clear();
        _isBad = false;
    }
}
