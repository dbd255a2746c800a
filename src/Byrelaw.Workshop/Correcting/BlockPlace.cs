namespace Byrelaw.Workshop.Correcting;

/// <summary>The lines of the block around a statement: as much of a file as one slip can spoil.</summary>
internal sealed class BlockPlace
{
    private readonly SourceFile _source;
    private readonly int _start;
    private readonly int _end;

    public BlockPlace(TypedStatement statement)
    {
        _source = statement.File.Source;
        var at = statement.Line.Span.Start;
        var blocks = statement.File.Blocks;

        // A line that could not be read starts a block of its own, but may have been meant as a line of the one above.
        var first = blocks.LastOrDefault(block => block.Span.Start <= at && block.Kind != BlockKind.Unreadable);
        var next = blocks.FirstOrDefault(block => block.Span.Start > at && block.Kind != BlockKind.Unreadable);
        FirstLine = _source.LineAt(first?.Span.Start ?? at);
        _start = _source.StartOf(FirstLine);
        _end = next is null ? _source.Text.Length : _source.StartOf(_source.LineAt(next.Span.Start));
    }

    /// <summary>The line (from 1) of the file with which it starts.</summary>
    public int FirstLine { get; }

    /// <summary>Whether a change lies within it.</summary>
    public bool Holds(Proposal made) => made.At.Start >= _start && made.At.End <= _end;

    /// <summary>Its text with a change made.</summary>
    public string With(Proposal made) => string.Concat(
        _source.Text.AsSpan(_start, made.At.Start - _start), made.Text, _source.Text.AsSpan(made.At.End, _end - made.At.End));
}
