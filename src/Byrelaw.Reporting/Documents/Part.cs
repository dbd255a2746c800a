namespace Byrelaw.Reporting.Documents;

/// <summary>A part of a page: one section of the HTML.</summary>
/// <param name="name">What it is, for the style sheet.</param>
/// <param name="blocks">In order.</param>
public sealed class Part(string name, ImmutableArray<Element> blocks)
{
    private readonly Lazy<string> _markdown = new(() => MarkdownWriter.Write(blocks));

    /// <summary>A part that says nothing, and is not shown.</summary>
    public static readonly Part None = new("", []);

    /// <summary>What it is, for the style sheet.</summary>
    public string Name => name;

    /// <summary>In order.</summary>
    public ImmutableArray<Element> Blocks => blocks;

    /// <summary>Its words as Markdown; empty for a part that only HTML can show. Both kinds of page are made of it, so it is written once.</summary>
    public string Markdown => _markdown.Value;
}
