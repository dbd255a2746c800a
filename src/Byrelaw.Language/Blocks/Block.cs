namespace Byrelaw.Language.Blocks;

/// <summary>A head line and the lines that belong to it.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Span">Its first line.</param>
internal sealed record Block(BlockKind Kind, SourceSpan Span)
{
    /// <summary>The head; null where it could not be read.</summary>
    public HeadLine? Head { get; init; }

    /// <summary>The lines below it that could be read, in order.</summary>
    public List<BodyLine> Lines { get; } = [];

    /// <summary>Whether any line in it could not be read. A broken block is read for problems only.</summary>
    public bool IsBroken { get; set; }

    /// <summary>Whether any line follows the first one, readable or not.</summary>
    public bool HasBody { get; set; }

    /// <summary>The first line of a kind; null where there is none.</summary>
    public T? First<T>() where T : BodyLine
    {
        foreach (var line in Lines)
        {
            if (line is T found)
            {
                return found;
            }
        }

        return null;
    }
}
