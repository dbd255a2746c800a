namespace Byrelaw.Workshop.Tidying.Written;

/// <summary>A block as it stands in a file.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Head">Its first line.</param>
internal sealed record WrittenBlock(BlockKind Kind, Statement Head)
{
    /// <summary>The lines below the head, in the order of writing.</summary>
    public List<Statement> Body { get; } = [];

    /// <summary>Comments that end it, on lines of their own.</summary>
    public List<Comment> Below { get; } = [];

    /// <summary>Whether it is its head and no more.</summary>
    public bool IsOneLine => Body.Count == 0 && Below.Count == 0;
}
