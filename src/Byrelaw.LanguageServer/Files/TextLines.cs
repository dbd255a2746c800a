using System.Runtime.CompilerServices;

namespace Byrelaw.LanguageServer.Files;

/// <summary>Turns offsets of a text into the protocol's places and back. Its lines end with LF, CR LF or a CR alone.</summary>
internal sealed class TextLines
{
    private static readonly ConditionalWeakTable<SourceFile, TextLines> Known = [];

    private readonly string _text;
    private readonly List<int> _starts = [0];

    /// <summary>Takes a text.</summary>
    public TextLines(string text)
    {
        _text = text;
        for (var at = text.AsSpan().IndexOfAny('\r', '\n'); at >= 0;)
        {
            var next = at + (text[at] == '\r' && at + 1 < text.Length && text[at + 1] == '\n' ? 2 : 1);
            _starts.Add(next);
            var more = text.AsSpan(next).IndexOfAny('\r', '\n');
            at = more < 0 ? -1 : next + more;
        }
    }

    /// <summary>Those of a file, found once.</summary>
    public static TextLines Of(SourceFile file) => Known.GetValue(file, known => new TextLines(known.Text));

    /// <summary>The place of an offset.</summary>
    public Position At(int offset)
    {
        var index = _starts.BinarySearch(offset);
        var line = index >= 0 ? index : ~index - 1;
        return new Position(line, offset - _starts[line]);
    }

    /// <summary>The offset of a place; places past the end of a line or of the text count as that end.</summary>
    public int Offset(Position place)
    {
        if (place.Line < 0)
        {
            return 0;
        }

        if (place.Line >= _starts.Count)
        {
            return _text.Length;
        }

        var end = place.Line + 1 < _starts.Count ? _starts[place.Line + 1] : _text.Length;
        while (end > _starts[place.Line] && _text[end - 1] is '\r' or '\n')
        {
            end--;
        }

        return (int)Math.Clamp((long)_starts[place.Line] + place.Character, _starts[place.Line], end);
    }

    /// <summary>The place of a stretch of text.</summary>
    public Protocol.Range Range(int start, int end) => new(At(start), At(end));

    /// <summary>The place of a stretch of a file.</summary>
    public static Protocol.Range Range(SourceSpan span) => Of(span.File).Range(span.Start, span.End);

    /// <summary>Everything.</summary>
    public Protocol.Range All => Range(0, _text.Length);
}
