using System.Runtime.CompilerServices;

namespace Byrelaw.Reporting.Documents;

/// <summary>Puts a document together, block by block: a part of a page, or a text for a terminal.</summary>
public sealed class BlockBuilder
{
    private readonly ImmutableArray<Block>.Builder _blocks = ImmutableArray.CreateBuilder<Block>();

    private int _depth;

    /// <summary>The blocks that follow stand so far in, on a terminal; pages set parts off by headings.</summary>
    public BlockBuilder In(int depth)
    {
        _depth = depth;
        return this;
    }

    /// <summary>An empty line on a terminal; pages set their blocks apart themselves.</summary>
    public BlockBuilder Gap() => Add(new EmptyLine());

    /// <summary>A heading of this level.</summary>
    public BlockBuilder Heading(int level, Wording words) => Add(new Heading(level, words));

    /// <summary>A sentence; nothing for no words.</summary>
    public BlockBuilder Sentence(Wording words) => words.IsEmpty ? this : Add(new Sentence(words));

    /// <summary>A sentence that starts with a phrase in bold.</summary>
    public BlockBuilder Led(string lead, string words) => Sentence($"{Wording.Bold(lead)} {words}");

    /// <summary>A list; nothing for no items.</summary>
    [OverloadResolutionPriority(1)]
    public BlockBuilder Bullets(IEnumerable<string> items) => Bullets(items.Select(item => (Wording)item));

    /// <summary>A list; nothing for no items.</summary>
    public BlockBuilder Bullets(IEnumerable<Wording> items) => Add(new Listing([.. items], IsNumbered: false));

    /// <summary>A numbered list; nothing for no items.</summary>
    public BlockBuilder Numbered(IEnumerable<string> items) => Add(new Listing([.. items.Select(item => (Wording)item)], IsNumbered: true));

    /// <summary>A quotation.</summary>
    public BlockBuilder Quotation(Wording words) => Add(new Quotation(words));

    /// <summary>Lines of a file, shown as they are.</summary>
    public BlockBuilder FileLines(IEnumerable<string> lines) => Add(new FileLines([.. lines]));

    /// <summary>A table; nothing where it has no rows.</summary>
    public BlockBuilder Table(Table table) => table.IsEmpty ? this : Add(table);

    /// <summary>A drawing; nothing for none.</summary>
    public BlockBuilder Picture(string? html) => html is null ? this : Add(new Picture(html));

    /// <summary>The part.</summary>
    /// <param name="name">What it is, for the style sheet.</param>
    public Part As(string name) => new(name, _blocks.ToImmutable());

    /// <summary>The text for a terminal, with line ends LF.</summary>
    public string OnTerminal(Ink ink) => TerminalWriter.Of(_blocks, ink);

    private BlockBuilder Add(Block block)
    {
        if (block is not Listing { Items.IsEmpty: true })
        {
            _blocks.Add(block with { Depth = _depth });
        }

        return this;
    }
}
