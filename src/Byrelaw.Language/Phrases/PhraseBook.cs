using Byrelaw.Language.Grammar;
using Byrelaw.Language.Lexing;
using Byrelaw.Language.Rulebooks.Words;

namespace Byrelaw.Language.Phrases;

/// <summary>
/// All declared names of several words, of every file of a rulebook. Wherever such words stand
/// together they become one token, the longest name first, so that no grammar trips over reserved words in them.
/// </summary>
internal sealed class PhraseBook
{
    private readonly Dictionary<string, List<string[]>> _byFirstWord = new(StringComparer.Ordinal);

    /// <summary>Learns the names that a line declares.</summary>
    public void Learn(LogicalLine line)
    {
        foreach (var (start, count) in DeclaredNames.In(line))
        {
            var name = line.Tokens[start..(start + count)];
            Learn(name[0].Kind == TokenKind.Text
                ? NameFolding.Fold(name[0].Text).Split(' ')
                : Array.ConvertAll(name, word => word.Folded));
        }
    }

    private void Learn(string[] words)
    {
        // A name in quotes may start with a reserved word; without them it is only that word.
        if (words.Length < 2 || ReservedWords.Holds(words[0]))
        {
            return;
        }

        if (!_byFirstWord.TryGetValue(words[0], out var names))
        {
            _byFirstWord[words[0]] = names = [];
        }

        if (!names.Exists(other => other.AsSpan().SequenceEqual(words)))
        {
            names.Add(words);
            names.Sort((a, b) => b.Length.CompareTo(a.Length));
        }
    }

    /// <summary>The line with every known name as one token, and the names it declares itself too.</summary>
    /// <param name="line">A line without bad tokens.</param>
    /// <param name="from">The first token that may belong to a name: after the line's head.</param>
    public LogicalLine Fuse(LogicalLine line, int from)
    {
        var declared = DeclaredNames.In(line);
        var fused = new List<Token>(line.Tokens.Length);
        var isFused = false;
        var next = 0;
        for (var at = 0; at < line.Tokens.Length;)
        {
            while (next < declared.Count && declared[next].Start < at)
            {
                next++;
            }

            // A declared name of one word ends there too: `event sale leaves the herd` declares `sale`.
            var isDeclared = next < declared.Count && declared[next].Start == at && line.Tokens[at].Kind != TokenKind.Text;
            var count = isDeclared ? declared[next].Count : at < from || IsTimeUnit(line, at) ? 1 : LongestAt(line, at);
            var isPhrase = isDeclared || count > 1;
            fused.Add(isPhrase ? Phrase(line.Tokens.AsSpan(at, count)) : line.Tokens[at]);
            isFused |= isPhrase;
            at += count;
        }

        return isFused ? new LogicalLine([.. fused]) : line;
    }

    private int LongestAt(LogicalLine line, int at)
    {
        foreach (var words in _byFirstWord.GetValueOrDefault(line.WordAt(at), []))
        {
            var place = 1;
            while (place < words.Length && line.WordAt(at + place) == words[place])
            {
                place++;
            }

            if (place == words.Length)
            {
                return place;
            }
        }

        return 1;
    }

    /// <summary>After a number <c>days</c> is a unit, whatever names start with it.</summary>
    private static bool IsTimeUnit(LogicalLine line, int at) =>
        at > 0 && line.Tokens[at - 1].Kind == TokenKind.Number && TimeUnitWords.Find(line.WordAt(at)) is not null;

    private static Token Phrase(ReadOnlySpan<Token> words)
    {
        var text = words[0].Text;
        foreach (var word in words[1..])
        {
            text += " " + word.Text;
        }

        return new Token(TokenKind.Phrase, words[0].Span.To(words[^1].Span)) { Text = text, Folded = NameFolding.Fold(text) };
    }
}
