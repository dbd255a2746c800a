namespace Byrelaw.Language.PhraseBooks;

/// <summary>Names as a tree of words, for finding the longest at a place.</summary>
internal sealed class PhraseTree
{
    private readonly Dictionary<string, PhraseTree> _next = new(StringComparer.Ordinal);
    private bool _endsName;

    /// <summary>Adds a name, as folded words.</summary>
    public void Add(string[] words)
    {
        var at = this;
        foreach (var word in words)
        {
            if (!at._next.TryGetValue(word, out var next))
            {
                at._next[word] = next = new PhraseTree();
            }

            at = next;
        }

        at._endsName = true;
    }

    /// <summary>How many words the longest name at a place of a line has; 1 where there is none.</summary>
    public int LongestAt(LogicalLine line, int place)
    {
        var longest = 1;
        var at = this;
        for (var i = place; at._next.TryGetValue(line.WordAt(i), out var next); i++)
        {
            at = next;
            longest = at._endsName ? i - place + 1 : longest;
        }

        return longest;
    }
}
