using System.Runtime.CompilerServices;

namespace Byrelaw.Reporting.Documents;

/// <summary>Puts a document together, block by block: a part of a page, or a text for a terminal.</summary>
public sealed class DocumentBuilder
{
    private readonly ImmutableArray<Element>.Builder _blocks = ImmutableArray.CreateBuilder<Element>();

    private int _depth;

    /// <summary>The blocks that follow stand so far in, on a terminal; pages set parts off by headings.</summary>
    public DocumentBuilder In(int depth)
    {
        _depth = depth;
        return this;
    }

    /// <summary>An empty line on a terminal; pages set their blocks apart themselves.</summary>
    public DocumentBuilder Gap() => Add(new EmptyLine());

    /// <summary>A heading of this level.</summary>
    public DocumentBuilder Heading(int level, Wording words) => Add(new Heading(level, words));

    /// <summary>A sentence; nothing for no words.</summary>
    public DocumentBuilder Sentence(Wording words) => words.IsEmpty ? this : Add(new Sentence(words));

    /// <summary>A sentence of this tone; nothing for no words.</summary>
    public DocumentBuilder Sentence(Wording words, Tone tone) => words.IsEmpty ? this : Add(new Sentence(words, tone));

    /// <summary>A sentence that starts with a phrase in bold.</summary>
    public DocumentBuilder Led(string lead, string words) => Sentence($"{Wording.Bold(lead)} {words}");

    /// <summary>A list; nothing for no items.</summary>
    [OverloadResolutionPriority(1)]
    public DocumentBuilder Bullets(IEnumerable<string> items) => Bullets(items.Select(item => (Wording)item));

    /// <summary>A list; nothing for no items.</summary>
    public DocumentBuilder Bullets(IEnumerable<Wording> items) => Add(new Listing([.. items], IsNumbered: false));

    /// <summary>A numbered list; nothing for no items.</summary>
    [OverloadResolutionPriority(1)]
    public DocumentBuilder Numbered(IEnumerable<string> items) => Numbered(items.Select(item => (Wording)item));

    /// <summary>A numbered list; nothing for no items.</summary>
    public DocumentBuilder Numbered(IEnumerable<Wording> items) => Add(new Listing([.. items], IsNumbered: true));

    /// <summary>A quotation.</summary>
    public DocumentBuilder Quotation(Wording words) => Add(new Quotation(words));

    /// <summary>Lines of a file, shown as they are.</summary>
    public DocumentBuilder FileLines(IEnumerable<string> lines) => Add(new FileLines([.. lines]));

    /// <summary>A table; nothing where it has no rows.</summary>
    public DocumentBuilder Table(Table table) => table.IsEmpty ? this : Add(table);

    /// <summary>A drawing; nothing for none.</summary>
    public DocumentBuilder Picture(string? html) => html is null ? this : Add(new Picture(html));

    /// <summary>What HTML draws, and the others say in words; nothing for nothing.</summary>
    public DocumentBuilder Draw(Drawn? drawn) => drawn is null ? this : Add(drawn);

    /// <summary>What stands in a frame; nothing for no words.</summary>
    public DocumentBuilder Framed(Frame frame, params IEnumerable<Wording> sentences) =>
        sentences.Where(words => !words.IsEmpty).ToImmutableArray() is { IsEmpty: false } some ? Add(new Framed(frame, some)) : this;

    /// <summary>What is folded away until somebody asks; nothing for nothing.</summary>
    public DocumentBuilder Fold(Wording summary, DocumentBuilder inside, bool onScreenOnly = false)
    {
        ArgumentNullException.ThrowIfNull(inside);
        return inside._blocks.Count == 0 ? this : Add(new Folded(summary, inside._blocks.ToImmutable(), onScreenOnly));
    }

    /// <summary>What another one has put together, behind it.</summary>
    public DocumentBuilder And(DocumentBuilder other)
    {
        ArgumentNullException.ThrowIfNull(other);
        _blocks.AddRange(other._blocks);
        return this;
    }

    /// <summary>The part.</summary>
    /// <param name="name">What it is, for the style sheet.</param>
    /// <param name="anchor">The place that links lead to; null for none.</param>
    public Part As(string name, string? anchor = null) => new(name, _blocks.ToImmutable(), anchor);

    /// <summary>The text for a terminal, with line ends LF.</summary>
    public string OnTerminal(Ink ink) => TerminalWriter.Write(_blocks, ink);

    private DocumentBuilder Add(Element block)
    {
        if (block is not Listing { Items.IsEmpty: true })
        {
            _blocks.Add(block with { Depth = _depth });
        }

        return this;
    }
}
