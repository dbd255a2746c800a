namespace Byrelaw.Workshop.Correcting;

/// <summary>A statement with a problem, cut into the words that a hand types.</summary>
internal sealed class TypedStatement
{
    public TypedStatement(RuleFile file, LogicalLine line, int offset, int length)
    {
        (File, Line) = (file, line);
        Words = Cut(line);
        var first = Words.FindIndex(word => word.End > offset);
        var last = Words.FindLastIndex(word => word.Start < offset + length);
        First = first < 0 ? Words.Count : first;
        Last = Math.Max(First, last);
        Kind = file.Blocks.LastOrDefault(block => block.Span.Start <= line.Span.Start && block.Kind != BlockKind.Unreadable)?.Kind;
    }

    public RuleFile File { get; }

    public LogicalLine Line { get; }

    /// <summary>What stands between spaces; a text in quotes is one word, a comma belongs to the word before it.</summary>
    public List<SourceSpan> Words { get; }

    /// <summary>The first word that the problem marks; the number of words where it marks the line's end.</summary>
    public int First { get; }

    /// <summary>The last word that the problem marks.</summary>
    public int Last { get; }

    /// <summary>The sort of block it stands in, or may have been meant to stand in; null where none is above it.</summary>
    public BlockKind? Kind { get; }

    /// <summary>A word without its comma, folded.</summary>
    public string Folded(int word) => FoldedWords.Of(Bare(word).Text);

    /// <summary>A word's place without its comma.</summary>
    public SourceSpan Bare(int word) => Words[word].Text is [_, .., ','] ? Words[word] with { Length = Words[word].Length - 1 } : Words[word];

    private static List<SourceSpan> Cut(LogicalLine line)
    {
        var words = new List<SourceSpan>();
        foreach (var token in line.Tokens)
        {
            if (words.Count > 0 && words[^1].End == token.Span.Start)
            {
                words[^1] = words[^1].To(token.Span);
            }
            else
            {
                words.Add(token.Span);
            }
        }

        return words;
    }
}
