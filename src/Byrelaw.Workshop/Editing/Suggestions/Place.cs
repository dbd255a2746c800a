namespace Byrelaw.Workshop.Editing.Suggestions;

/// <summary>Where someone is typing: the block's first line, the words before in the line, and what has been typed of the next.</summary>
/// <param name="Head">The first line of the block that the place may belong to; null above the first block.</param>
/// <param name="Tokens">The finished words of the line before the place; empty at a line's start.</param>
/// <param name="Typed">The word or the open text that is being typed; empty where a new one starts.</param>
/// <param name="IsIndented">Whether blanks stand before the line's first word.</param>
internal sealed record Place(LogicalLine? Head, Token[] Tokens, SourceSpan Typed, bool IsIndented)
{
    /// <summary>Whether the place is inside a text in quotes.</summary>
    public bool IsInText => Typed.Length > 0 && Typed.File.Text[Typed.Start] == '"';

    /// <summary>Finds out; null where nothing can be typed but more of a comment or a number.</summary>
    public static Place? At(SourceFile file, int offset)
    {
        var before = new SourceFile(file.Path, file.Text[..offset]);
        var lexed = Lexer.Lex(before);
        if (lexed.Comments is [.., var comment] && comment.End == offset)
        {
            return null;
        }

        var lineStart = before.StartOf(before.LineCount);
        var lines = LineSplitter.Split(lexed);
        var isOnLine = lines.Count > 0 && lines[^1].Span.End > lineStart;
        var tokens = isOnLine ? lines[^1].Tokens : [];
        var last = tokens.Length > 0 && tokens[^1].Span.End == offset ? tokens[^1] : null;
        if (last?.Kind is TokenKind.Number or TokenKind.Percent or TokenKind.Date or TokenKind.Text)
        {
            return null;
        }

        var isTyping = last?.Kind is TokenKind.Word or TokenKind.Unit or TokenKind.Bad;
        var typed = isTyping ? new SourceSpan(file, last!.Span.Start, offset - last.Span.Start) : new SourceSpan(file, offset, 0);
        return new Place(
            HeadOf(lines.Take(lines.Count - (isOnLine ? 1 : 0))), isTyping ? tokens[..^1] : tokens, Whole(typed),
            offset > lineStart && char.IsWhiteSpace(file.Text[lineStart]));
    }

    /// <summary>An open text goes to its closing quote, which editors often put in by themselves.</summary>
    private static SourceSpan Whole(SourceSpan typed)
    {
        var text = typed.File.Text;
        if (typed.Length == 0 || text[typed.Start] != '"')
        {
            return typed;
        }

        var end = text.AsSpan(typed.End).IndexOfAny('"', '\r', '\n');
        return end >= 0 && text[typed.End + end] == '"' ? typed with { Length = typed.Length + end + 1 } : typed;
    }

    /// <summary>The last head among lines. Which lines are heads depends on the block above them.</summary>
    private static LogicalLine? HeadOf(IEnumerable<LogicalLine> lines)
    {
        LogicalLine? head = null;
        foreach (var line in lines)
        {
            if (LineTable.StartsBlock(line, head is null ? null : LineTable.Heads[head.WordAt(0)].Kind))
            {
                head = line;
            }
        }

        return head;
    }
}
