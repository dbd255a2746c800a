using Pidgin;
using Pidgin.Configuration;

namespace Byrelaw.Language.Grammar;

/// <summary>What the grammar makes of lines: for each, what every token was taken for and what could have followed the last.</summary>
internal sealed class GrammarNotes : IConfiguration<Token>
{
    private readonly List<NotedLine> _lines = [];

    /// <summary>The lines in the order of reading; a line in which a token is bad is not among them.</summary>
    public IReadOnlyList<NotedLine> Lines => _lines;

    /// <inheritdoc/>
    public Func<Token, SourcePosDelta> SourcePosCalculator { get; } = Configuration.Default<Token>().SourcePosCalculator;

    /// <inheritdoc/>
    public IArrayPoolProvider ArrayPoolProvider { get; } = Configuration.Default<Token>().ArrayPoolProvider;

    /// <summary>A line is about to be read.</summary>
    /// <param name="line">With names of several words as one token.</param>
    /// <param name="block">The block it stands in or starts.</param>
    public void Begin(LogicalLine line, BlockKind block) => _lines.Add(new NotedLine(line, block));

    /// <summary>The line was read to its end.</summary>
    public void End() => _lines[^1].MayEnd = true;

    /// <summary>A leaf was tried at a place of the line. What is taken later at the same place is what holds:
    /// before it the grammar had gone back.</summary>
    public void Note(int place, Wanted wanted, bool isTaken)
    {
        var line = _lines[^1];
        if (isTaken)
        {
            line.Taken[place] = wanted;
        }
        else if (place == line.Taken.Length && !line.Following.Contains(wanted))
        {
            line.Following.Add(wanted);
        }
    }
}

/// <summary>One line as the grammar saw it.</summary>
/// <param name="Line">With names of several words as one token.</param>
/// <param name="Block">The block it stands in or starts.</param>
internal sealed record NotedLine(LogicalLine Line, BlockKind Block)
{
    /// <summary>What each token was taken for; null for one that nothing took.</summary>
    public Wanted?[] Taken { get; } = new Wanted?[Line.Tokens.Length];

    /// <summary>Whether the line may end after its last token.</summary>
    public bool MayEnd { get; set; }

    /// <summary>What could have stood after the last token, in the order in which the grammar tried it.</summary>
    public List<Wanted> Following { get; } = [];
}
