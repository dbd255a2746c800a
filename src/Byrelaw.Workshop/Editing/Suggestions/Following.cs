namespace Byrelaw.Workshop.Editing.Suggestions;

/// <summary>Asks the grammar what may follow some words of a line.</summary>
internal sealed class Following(LogicalLine? head, PhraseBook phrases, SourceSpan at)
{
    private const int MostWords = 4;

    /// <summary>What the grammar made of a line's first words; null where no grammar reads such a line.</summary>
    public NotedLine? After(Token[] words)
    {
        if (words is [var first] && LineStarts.InBlock(head, first) is { } own)
        {
            return own;
        }

        var notes = new GrammarNotes();
        var line = new LogicalLine(words);
        BlockReader.Read(head is null ? [line] : [head, line], phrases, [], notes);
        return notes.Lines.LastOrDefault(noted => noted.Line.Tokens[0].Span.Start == words[0].Span.Start);
    }

    /// <summary>
    /// A word of the language with those that can only come after it, such as <c>at least</c> and <c>at most</c> for <c>at</c>.
    /// Where other things may follow too, the word alone is one of the results.
    /// </summary>
    public IEnumerable<string> Phrases(Token[] before, string word) =>
        Phrases([.. before, Word(word)], word, 1).Distinct();

    private IEnumerable<string> Phrases(Token[] words, string phrase, int length)
    {
        var line = length < MostWords ? After(words) : null;
        if (line is null || (line.MayEnd && line.Taken[^1]?.Kind == LeafKind.Word))
        {
            yield return phrase;
            yield break;
        }

        // A word such as `one` may be a name too; then what follows it as a name comes after what follows it as a word.
        var next = line.MayEnd ? line.Following.TakeWhile(wanted => wanted.Kind == LeafKind.Word).ToList() : line.Following;
        var fixedWords = next.FindAll(wanted => wanted.Kind == LeafKind.Word);
        if (fixedWords.Count < next.Count || next.Count == 0)
        {
            yield return phrase;
        }

        foreach (var wanted in fixedWords)
        {
            foreach (var longer in Phrases([.. words, Word(wanted.Label)], $"{phrase} {wanted.Label}", length + 1))
            {
                yield return longer;
            }
        }
    }

    private Token Word(string word) => new(TokenKind.Word, at) { Text = word, Folded = word };
}
