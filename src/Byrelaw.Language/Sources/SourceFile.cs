namespace Byrelaw.Language.Sources;

/// <summary>A text with the name it is known by in messages, and the places of its lines.</summary>
public sealed class SourceFile
{
    private readonly int[] _lineStarts;
    private LineText? _lastLine;

    /// <summary>Takes a text; a byte-order mark at its start is dropped.</summary>
    /// <param name="path">As shown in messages: relative, with forward slashes.</param>
    /// <param name="text">The whole text, line ends LF or CRLF.</param>
    public SourceFile(string path, string text)
    {
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(text);
        Path = path;
        Text = text.Length > 0 && text[0] == '\uFEFF' ? text[1..] : text;
        var starts = new List<int> { 0 };
        for (var i = 0; i < Text.Length; i++)
        {
            if (Text[i] == '\n')
            {
                starts.Add(i + 1);
            }
        }

        _lineStarts = [.. starts];
    }

    /// <summary>As shown in messages.</summary>
    public string Path { get; }

    /// <summary>The whole text without a byte-order mark.</summary>
    public string Text { get; }

    /// <summary>Whether the program wrote it itself, as it did the floor.</summary>
    internal bool IsOfTheProgram { get; init; }

    /// <summary>How many lines the text has; an empty text has one.</summary>
    public int LineCount => _lineStarts.Length;

    /// <summary>The line (from 1) that holds a character offset.</summary>
    public int LineAt(int offset)
    {
        var index = Array.BinarySearch(_lineStarts, offset);
        return (index >= 0 ? index : ~index - 1) + 1;
    }

    /// <summary>The column (from 1, in UTF-16 units) of a character offset.</summary>
    public int ColumnAt(int offset) => offset - _lineStarts[LineAt(offset) - 1] + 1;

    /// <summary>The text of a line (from 1) without its line end.</summary>
    public string Line(int line)
    {
        // Many problems of one line share one copy of it, which matters where the line is very long.
        if (_lastLine is { } last && last.Number == line)
        {
            return last.Text;
        }

        var start = _lineStarts[line - 1];
        var end = line < _lineStarts.Length ? _lineStarts[line] : Text.Length;
        var text = Text[start..end].TrimEnd('\r', '\n');
        _lastLine = new LineText(line, text);
        return text;
    }

    /// <summary>The offset at which a line (from 1) starts.</summary>
    public int StartOf(int line) => _lineStarts[line - 1];

    private sealed record LineText(int Number, string Text);
}
