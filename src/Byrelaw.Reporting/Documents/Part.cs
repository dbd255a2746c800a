namespace Byrelaw.Reporting.Documents;

/// <summary>A part of a page: one section of the HTML.</summary>
/// <param name="name">What it is, for the style sheet.</param>
/// <param name="blocks">In order.</param>
/// <param name="anchor">The place that links lead to; null for none.</param>
public sealed class Part(string name, ImmutableArray<Element> blocks, string? anchor = null)
{
    private readonly Lazy<string> _markdown = new(() => MarkdownWriter.Write(blocks));

    /// <summary>A part that says nothing, and is not shown.</summary>
    public static readonly Part None = new("", []);

    /// <summary>What it is, for the style sheet.</summary>
    public string Name => name;

    /// <summary>The place that links lead to; null for none.</summary>
    public string? Anchor => anchor;

    /// <summary>In order.</summary>
    public ImmutableArray<Element> Blocks => blocks;

    /// <summary>Its words as Markdown; empty for a part that only HTML can show.</summary>
    public string Markdown => _markdown.Value;
}
