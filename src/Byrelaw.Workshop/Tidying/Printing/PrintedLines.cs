namespace Byrelaw.Workshop.Tidying.Printing;

/// <summary>The lines that are printed.</summary>
internal sealed class PrintedLines
{
    /// <summary>How wide a line may be, where its words allow it.</summary>
    public const int Width = 100;

    private readonly List<string> _lines = [];

    /// <summary>An empty line.</summary>
    public void Blank() => _lines.Add("");

    /// <summary>A comment on a line of its own.</summary>
    public void Add(int indent, Comment comment) => _lines.Add(Spaces(indent) + comment.Text);

    /// <summary>A statement, with its comments inside and beside; those above it are the caller's.</summary>
    public void Add(int indent, Layout layout, Statement statement)
    {
        if (layout is EndsWithText ends)
        {
            Add(indent, ends, statement);
        }
        else
        {
            AddOneLine(indent, layout is OneLine one ? one.Words : Columns.Align([(Row)layout])[0], statement);
        }
    }

    /// <summary>A statement that is one line; comments between its texts stand above it, for it has no longer a place for them.</summary>
    private void AddOneLine(int indent, string words, Statement statement)
    {
        foreach (var comment in statement.Inside)
        {
            Add(indent, comment);
        }

        _lines.Add(Spaces(indent) + words);
        Beside(statement.Beside);
    }

    private void Add(int indent, EndsWithText ends, Statement statement)
    {
        var start = indent + DisplayWidth.Of(ends.Words) + 1;
        var before = $"{Spaces(indent)}{ends.Words} ";
        if (statement.Pieces.Count == 0)
        {
            AddText(before, start, TextWrapping.Wrap(ends.Text, Width - start));
        }

        foreach (var piece in statement.Pieces)
        {
            AddText(before, start, TextWrapping.Wrap(piece.Text.Trim(' '), Width - start));
            before = Spaces(start);
            foreach (var comment in piece.After)
            {
                Beside(comment.IsBeside ? comment : null);
                _lines.AddRange(comment.IsBeside ? [] : [Spaces(start) + comment.Text]);
            }
        }

        Beside(statement.Beside);
    }

    private void AddText(string before, int start, List<string> texts) =>
        _lines.AddRange(texts.Select((text, i) => (i == 0 ? before : Spaces(start)) + text));

    private void Beside(Comment? comment)
    {
        if (comment is not null)
        {
            _lines[^1] += "  " + comment.Text;
        }
    }

    /// <summary>The whole text: every line ends with LF; NFC.</summary>
    public override string ToString() => ComposedText.Of(string.Concat(_lines.Select(line => line + "\n")));

    private static string Spaces(int count) => new(' ', count);
}
