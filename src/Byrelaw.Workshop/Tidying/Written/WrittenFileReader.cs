namespace Byrelaw.Workshop.Tidying.Written;

/// <summary>Puts a file's statements and comments side by side, by their places.</summary>
internal sealed class WrittenFileReader
{
    private readonly RuleFile _file;
    private readonly Namespace _names;
    private readonly LexedFile _lexed;
    private readonly Dictionary<int, Block> _blocksByStart;
    private readonly Dictionary<int, LineSyntax> _syntaxByStart;
    private readonly Dictionary<int, NotedLine> _notedByStart;
    private readonly List<WrittenBlock> _blocks = [];
    private readonly List<Comment> _waiting = [];
    private Statement? _last;
    private int _lastLine;
    private int _nextComment;

    public WrittenFileReader(RuleFile file, ReadParts parts)
    {
        _file = file;
        _names = parts.Names;
        _lexed = Lexer.Lex(file.Source);
        _blocksByStart = file.Blocks.ToDictionary(block => block.Span.Start);
        _syntaxByStart = file.Blocks.SelectMany(block => block.Lines.Concat<LineSyntax>(block.Head is null ? [] : [block.Head]))
            .ToDictionary(line => line.Span.Start);
        var notes = new GrammarNotes();
        BlockReader.Read(file.Lines, parts.Phrases, [], notes);
        _notedByStart = notes.Lines.ToDictionary(line => line.Line.Span.Start);
    }

    /// <summary>Reads it all; once only.</summary>
    public WrittenFile Read()
    {
        foreach (var line in _file.Lines)
        {
            TakeComments(line.Span.Start);
            Add(line);
        }

        TakeComments(int.MaxValue);
        if (_blocks.Count > 0)
        {
            CommentGroups.MoveBelow(_waiting, _blocks[^1], isPartedFromNext: true);
        }

        return new WrittenFile(_blocks, _waiting);
    }

    private void Add(LogicalLine line)
    {
        var isParted = IsParted(line.Span.Line);
        var start = line.Span.Start;
        var statement = new Statement(line, _syntaxByStart.GetValueOrDefault(start), _notedByStart.GetValueOrDefault(start)) { Names = _names, HasBlankBefore = isParted, Pieces = Pieces(line) };
        if (_blocksByStart.TryGetValue(start, out var block))
        {
            if (_blocks.Count > 0)
            {
                CommentGroups.MoveBelow(_waiting, _blocks[^1], isParted);
            }

            _blocks.Add(new WrittenBlock(block.Kind, statement));
        }
        else
        {
            _blocks[^1].Body.Add(statement);
        }

        statement.Above.AddRange(_waiting);
        _waiting.Clear();
        _last = statement;
        _lastLine = _file.Source.LineAt(line.Span.End - 1);
    }

    /// <summary>Takes the comments before an offset: one beside the last statement, the others on lines of their own.</summary>
    private void TakeComments(int before)
    {
        while (HasCommentBefore(before))
        {
            var comment = Comment(_lexed.Comments[_nextComment++]);
            if (comment.IsBeside)
            {
                _last!.Beside = comment;
            }
            else
            {
                _waiting.Add(comment);
            }
        }
    }

    private Comment Comment(SourceSpan span)
    {
        var line = span.Line;
        var comment = new Comment(
            span.Text.TrimEnd(), IsBeside: line == _lastLine, IsIndented: span.Column > 1, IsParted(line));
        _lastLine = line;
        return comment;
    }

    private bool IsParted(int line) => _lastLine > 0 && line > _lastLine + 1;

    /// <summary>Texts run over lines, so comments can stand between them.</summary>
    private List<TextPiece> Pieces(LogicalLine line)
    {
        var whole = line.Tokens[^1].Span;
        var pieces = new List<TextPiece>();
        if (!HasCommentBefore(whole.End))
        {
            return pieces;
        }

        foreach (var token in _lexed.Tokens.Where(token => token.Kind == TokenKind.Text && token.Span.Start >= whole.Start && token.Span.Start < whole.End))
        {
            while (HasCommentBefore(token.Span.Start))
            {
                pieces[^1].After.Add(Comment(_lexed.Comments[_nextComment++]));
            }

            _lastLine = token.Span.Line;
            pieces.Add(new TextPiece(token.Text));
        }

        return pieces;
    }

    private bool HasCommentBefore(int offset) => _nextComment < _lexed.Comments.Count && _lexed.Comments[_nextComment].Start < offset;
}
