namespace Byrelaw.Records.Suggesting;

/// <summary>Which words a short text of a farm's file may stand for: <c>BCS</c> for body condition score, <c>LMN</c> for lameness, <c>Cu</c> for copper.</summary>
internal static class Abbreviations
{
    private const int Shortest = 2;
    private const int Longest = 6;

    /// <summary>A word no longer than this is written down by its first and last letter, too: <c>HT</c> for heat.</summary>
    private const int LongestByItsEnds = 5;

    /// <summary>More than so many, and it tells nothing.</summary>
    private const int MostKinds = 4;

    /// <summary>Chemical symbols of trace elements (IUPAC), by the words that people say.</summary>
    private static readonly ImmutableArray<(string Symbol, string Word)> Elements =
        [("cu", "copper"), ("se", "selenium"), ("zn", "zinc"), ("i", "iodine"), ("mg", "magnesium"), ("p", "phosphate"), ("co", "b12")];

    /// <summary>The kinds, whatever stands in brackets behind it, as in <c>Cu (umol/L)</c>; none where too many fit.</summary>
    public static IReadOnlyList<Kind> KindsFor(string text, Vocabulary vocabulary)
    {
        var letters = NameFolding.Fold(text.Split('(', '[')[0]).Trim();
        if (letters.Length is < 1 or > Longest || !letters.All(char.IsLetter))
        {
            return [];
        }

        // What stands for one thing by its initials or its symbol is not sought inside other words too.
        Predicate<string>[] ways = [name => IsElementOrInitials(letters, name) || IsItsEnds(letters, name), name => letters.Length > Shortest && name[0] == letters[0] && !name.Contains(' ', StringComparison.Ordinal) && IsWithin(letters, name)];
        var found = ways.Select(way => vocabulary.Kinds.Where(kind => kind.AlsoNames.Prepend(kind.Name).Any(name => way(NameFolding.Fold(name)))).ToList()).FirstOrDefault(kinds => kinds.Count > 0);
        return found is { Count: <= MostKinds } ? found : [];
    }

    private static bool IsElementOrInitials(string letters, string name)
    {
        var words = name.Split(' ');
        var element = Elements.FirstOrDefault(one => one.Symbol == letters).Word;
        return (element is not null && words.Length > 1 && words[^1] == element) || (letters.Length >= Shortest && string.Concat(words.Select(word => word[0])) == letters);
    }

    private static bool IsItsEnds(string letters, string name) =>
        letters.Length == Shortest && name.Length <= LongestByItsEnds && !name.Contains(' ', StringComparison.Ordinal) && name[0] == letters[0] && name[^1] == letters[1];

    /// <summary>Whether the letters stand in a name in their order, with others between.</summary>
    private static bool IsWithin(string letters, string name)
    {
        var at = 0;
        foreach (var sign in name)
        {
            at += at < letters.Length && letters[at] == sign ? 1 : 0;
        }

        return at == letters.Length;
    }
}
