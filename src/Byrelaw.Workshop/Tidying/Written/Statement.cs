namespace Byrelaw.Workshop.Tidying.Written;

/// <summary>A statement with the comments that belong to it.</summary>
/// <param name="Line">Its tokens.</param>
/// <param name="Syntax">What it was read as; null for a line of a block that this version does not use.</param>
/// <param name="Noted">What the grammar took each word for; null for the same.</param>
internal sealed record Statement(LogicalLine Line, LineSyntax? Syntax, NotedLine? Noted)
{
    /// <summary>What the names in it mean.</summary>
    public required Namespace Names { get; init; }

    /// <summary>Comments on lines of their own above it.</summary>
    public List<Comment> Above { get; } = [];

    /// <summary>Whether an empty line stands directly above it.</summary>
    public bool HasBlankBefore { get; init; }

    /// <summary>The texts that it ends with, where comments stand between them; else none.</summary>
    public IReadOnlyList<TextPiece> Pieces { get; init; } = [];

    /// <summary>The comment after it on its last line.</summary>
    public Comment? Beside { get; set; }

    /// <summary>Whether an empty line stands anywhere between it and what is above.</summary>
    public bool IsParted => HasBlankBefore || Above.Exists(comment => comment.HasBlankBefore);

    /// <summary>Whether it is nothing but a text, so that it would run on from a text above it.</summary>
    public bool IsTextAlone => Array.TrueForAll(Line.Tokens, token => token.Kind == TokenKind.Text);

    /// <summary>All its comments, in their order.</summary>
    public IEnumerable<Comment> Comments => Beside is null ? Above.Concat(Inside) : [.. Above, .. Inside, Beside];

    /// <summary>The comments between its texts.</summary>
    public IEnumerable<Comment> Inside => Pieces.SelectMany(piece => piece.After);
}
