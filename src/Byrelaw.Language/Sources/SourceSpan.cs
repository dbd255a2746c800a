namespace Byrelaw.Language.Sources;

/// <summary>A stretch of one file's text.</summary>
/// <param name="File">Whose text.</param>
/// <param name="Start">Offset of the first character.</param>
/// <param name="Length">In UTF-16 units; 0 marks a place between two characters.</param>
public readonly record struct SourceSpan(SourceFile File, int Start, int Length)
{
    /// <summary>The offset just past the last character.</summary>
    public int End => Start + Length;

    /// <summary>The line of the first character, from 1.</summary>
    public int Line => File.LineAt(Start);

    /// <summary>The column of the first character, from 1.</summary>
    public int Column => File.ColumnAt(Start);

    /// <summary>The text itself.</summary>
    public string Text => File.Text.Substring(Start, Length);

    /// <summary>The shortest stretch that holds this one and <paramref name="other"/>.</summary>
    public SourceSpan To(SourceSpan other)
    {
        var start = Math.Min(Start, other.Start);
        return new SourceSpan(File, start, Math.Max(End, other.End) - start);
    }

    /// <inheritdoc/>
    public override string ToString() => $"{File?.Path}:{(File is null ? 0 : Line)}";
}
