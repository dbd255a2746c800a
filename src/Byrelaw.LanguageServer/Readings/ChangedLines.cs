namespace Byrelaw.LanguageServer.Readings;

/// <summary>The lines between the first and the last that differ in two texts, and how far those below have moved.</summary>
internal sealed class ChangedLines
{
    private readonly int _first;
    private readonly int _afterLast;
    private readonly int _down;

    /// <summary>Compares two texts.</summary>
    public ChangedLines(string then, string now)
    {
        // A CR by itself ends a line too (LSP 3.17). A file that has such lines is not followed exactly; it is looked at again soon.
        var (old, @new) = (then.Split('\n'), now.Split('\n'));
        var most = Math.Min(old.Length, @new.Length);
        while (_first < most && old[_first] == @new[_first])
        {
            _first++;
        }

        var same = 0;
        while (same < most - _first && old[^(same + 1)] == @new[^(same + 1)])
        {
            same++;
        }

        _afterLast = old.Length - same;
        _down = @new.Length - old.Length;
    }

    /// <summary>Where a stretch of the first text stands in the second; null where one of its lines was changed.</summary>
    public Protocol.Range? Moves(Protocol.Range then) =>
        then.End.Line < _first ? then
        : then.Start.Line >= _afterLast ? new Protocol.Range(Down(then.Start), Down(then.End))
        : null;

    private Position Down(Position place) => place with { Line = place.Line + _down };
}
