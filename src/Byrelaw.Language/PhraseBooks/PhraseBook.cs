namespace Byrelaw.Language.PhraseBooks;

/// <summary>
/// All declared names of several words, of every file of a rulebook. Wherever such words stand
/// together they become one token, the longest name first, so that no grammar trips over reserved words in them.
/// </summary>
internal sealed class PhraseBook
{
    private readonly PhraseTree _names = new();
    private readonly HashSet<string> _words = new(StringComparer.Ordinal);

    /// <summary>Starts with the one built-in name that holds a reserved word.</summary>
    public PhraseBook() => _names.Add(Binding.Farm.ProgrammeDates.StartOfMating.Split(' '));

    /// <summary>Learns the names that a line declares.</summary>
    public void Learn(LogicalLine line)
    {
        foreach (var (start, count) in DeclaredNames.In(line))
        {
            var name = line.Tokens[start..(start + count)];
            var words = name[0].Kind == TokenKind.Text
                ? NameFolding.Fold(name[0].Text).Split(' ')
                : Array.ConvertAll(name, word => word.Folded);

            // A name in quotes may start with a reserved word; without them it is only that word.
            if (words.Length > 1 && !LanguageWords.EndName(words[0]))
            {
                _names.Add(words);
            }
            else if (words.Length == 1)
            {
                _words.Add(words[0]);
            }
        }
    }

    /// <summary>Whether a folded word is a whole name that is declared.</summary>
    public bool IsName(string folded) => _words.Contains(folded);

    /// <summary>Learns one name, folded.</summary>
    public void Learn(string name)
    {
        if (name.Split(' ') is { Length: > 1 } words)
        {
            _names.Add(words);
        }
    }

    /// <summary>The line with every known name as one token, and the names it declares itself too.</summary>
    /// <param name="line">A line without bad tokens.</param>
    /// <param name="from">The first token that may belong to a name: after the line's head.</param>
    public LogicalLine Fuse(LogicalLine line, int from)
    {
        var declared = DeclaredNames.In(line);
        var fused = new List<Token>(line.Tokens.Length);
        var next = 0;
        for (var at = 0; at < line.Tokens.Length;)
        {
            while (next < declared.Count && declared[next].Start < at)
            {
                next++;
            }

            var isDeclared = next < declared.Count && declared[next].Start == at;
            var count = isDeclared ? declared[next].Count : at < from || IsTimeUnit(line, at) ? 1 : _names.LongestAt(line, at);
            fused.Add(count == 1 ? line.Tokens[at] : Phrase(line.Tokens.AsSpan(at, count)));
            at += count;
        }

        return fused.Count == line.Tokens.Length ? line : new LogicalLine([.. fused]);
    }

    /// <summary>After a number <c>days</c> is a unit, whatever names start with it.</summary>
    private static bool IsTimeUnit(LogicalLine line, int at) =>
        at > 0 && line.Tokens[at - 1].Kind == TokenKind.Number && TimeUnitWords.Find(line.WordAt(at)) is not null;

    private static Token Phrase(ReadOnlySpan<Token> words)
    {
        var text = string.Join(' ', words.ToArray().Select(word => word.Text));
        return new Token(TokenKind.Phrase, words[0].Span.To(words[^1].Span)) { Text = text, Folded = NameFolding.Fold(text) };
    }
}
