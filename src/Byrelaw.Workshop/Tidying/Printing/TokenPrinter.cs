namespace Byrelaw.Workshop.Tidying.Printing;

/// <summary>A line word by word, with one space between: the language's own words, numbers and units the one way, people's names as written.</summary>
/// <param name="statement">The line, and what the grammar took its words for.</param>
internal sealed class TokenPrinter(Statement statement)
{
    private readonly Token[] _tokens = (statement.Noted?.Line ?? statement.Line).Tokens;

    /// <summary>How the line is set.</summary>
    public Layout Print() => _tokens.Length > 1 && _tokens[^1].Kind == TokenKind.Text
        ? new EndsWithText(Joined(0, _tokens.Length - 1), _tokens[^1].Text)
        : new OneLine(Joined(0, _tokens.Length));

    /// <summary>A part of the line.</summary>
    public string Print(SourceSpan part)
    {
        var from = Array.FindIndex(_tokens, token => token.Span.Start >= part.Start);
        var to = Array.FindLastIndex(_tokens, token => token.Span.Start < part.End);
        return from < 0 ? "" : Joined(from, to + 1);
    }

    private string Joined(int from, int to)
    {
        var line = new StringBuilder();
        for (var i = from; i < to; i++)
        {
            line.Append(i == from || _tokens[i].Kind == TokenKind.Comma ? "" : " ").Append(Word(i));
        }

        return line.ToString();
    }

    private string Word(int at) => _tokens[at] switch
    {
        { Kind: TokenKind.Text } text => NameText.Text(text.Text),
        { Kind: TokenKind.Number } number => NumberText.Of(number.Number),
        { Kind: TokenKind.Percent } percent => NumberText.Of(percent.Number) + "%",
        { Kind: TokenKind.Word or TokenKind.Phrase or TokenKind.Unit } word => Kind(at) switch
        {
            LeafKind.Word => word.Folded,
            LeafKind.Unit or LeafKind.TimeUnit => Words.Unit(word.Text, at > 0 ? _tokens[at - 1].Number : 0),
            _ => word.Text,
        },
        var sign => sign.Span.Text,
    };

    /// <summary>What the grammar took a word for; where no grammar read the line, a line's first word and reserved ones are the language's own.</summary>
    private LeafKind? Kind(int at) => statement.Noted is { } noted ? noted.Taken[at]?.Kind
        : at == 0 || LanguageWords.EndName(_tokens[at].Folded) ? LeafKind.Word
        : _tokens[at].Kind == TokenKind.Unit ? LeafKind.Unit
        : null;
}
