namespace Byrelaw.Reporting.Pages;

/// <summary>Writes the Markdown of one part of a page. What it is given are plain words unless it says Markdown.</summary>
public sealed class MarkdownPart
{
    private readonly StringBuilder _text = new();

    /// <summary>A heading of this level.</summary>
    public MarkdownPart Heading(int level, string words) => Block(new string('#', level) + " " + MarkdownText.Of(words));

    /// <summary>A heading of this level, Markdown.</summary>
    public MarkdownPart HeadingOf(int level, string markdown) => Block(new string('#', level) + " " + markdown);

    /// <summary>A paragraph.</summary>
    public MarkdownPart Words(string words) => words.Length == 0 ? this : Block(MarkdownText.Of(words));

    /// <summary>A paragraph that starts with a phrase in bold.</summary>
    public MarkdownPart Led(string lead, string words) => Block($"{MarkdownText.Bold(lead)} {MarkdownText.Of(words)}".TrimEnd());

    /// <summary>A paragraph, Markdown.</summary>
    public MarkdownPart Markdown(string markdown) => Block(markdown);

    /// <summary>A list.</summary>
    public MarkdownPart Bullets(IEnumerable<string> words) => Items(words.Select(MarkdownText.Of), _ => "- ");

    /// <summary>A list, each item Markdown.</summary>
    public MarkdownPart BulletsOf(IEnumerable<string> markdown) => Items(markdown, _ => "- ");

    /// <summary>A numbered list.</summary>
    public MarkdownPart Numbered(IEnumerable<string> words) => Items(words.Select(MarkdownText.Of), i => $"{i + 1}. ");

    /// <summary>A quotation.</summary>
    public MarkdownPart Quote(string words) => Block("> " + MarkdownText.Of(words));

    /// <summary>A table; nothing where it has no rows.</summary>
    public MarkdownPart Table(MarkdownTable table) => table.IsEmpty ? this : Block(table.ToString());

    /// <summary>The part.</summary>
    public Part As(string name, string? picture = null) => new(name, _text.ToString(), picture);

    private MarkdownPart Items(IEnumerable<string> items, Func<int, string> mark)
    {
        var list = string.Join('\n', items.Select((item, i) => mark(i) + item));
        return list.Length == 0 ? this : Block(list);
    }

    private MarkdownPart Block(string markdown)
    {
        if (_text.Length > 0)
        {
            _text.Append('\n');
        }

        _text.Append(markdown.TrimEnd('\n')).Append('\n');
        return this;
    }
}
