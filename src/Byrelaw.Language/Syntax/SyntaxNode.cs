namespace Byrelaw.Language.Syntax;

/// <summary>A part of a rule file as it is written.</summary>
internal abstract record SyntaxNode
{
    /// <summary>Where; never empty.</summary>
    public required SourceSpan Span { get; init; }
}
