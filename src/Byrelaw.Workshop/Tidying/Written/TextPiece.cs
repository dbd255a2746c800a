namespace Byrelaw.Workshop.Tidying.Written;

/// <summary>One of several texts that join to one.</summary>
/// <param name="Text">Its value.</param>
internal sealed record TextPiece(string Text)
{
    /// <summary>The comments between it and the next.</summary>
    public List<Comment> After { get; } = [];
}
