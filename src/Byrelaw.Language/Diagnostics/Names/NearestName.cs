namespace Byrelaw.Language.Diagnostics;

/// <summary>Finds the known name that a misspelt one most likely meant: of rules and words, of columns and kinds in records, of animals by number.</summary>
public static class NearestName
{
    private const int Longest = 60;

    /// <summary>The nearest of some names, as spelt there; of several as near the first in order; null where none is near.</summary>
    public static string? To(string written, IEnumerable<string> known) => To(written, Folded(known));

    /// <summary>The same where a wrong guess would do harm, as in records: null also where several are as near.</summary>
    public static string? OnlyOne(string written, IEnumerable<string> known) => Nearest(written, Folded(known)) is [var only] ? only : null;

    /// <summary>The nearest of names that are folded already.</summary>
    internal static string? To(string written, IEnumerable<(string Folded, string Spelling)> known) => Nearest(written, known).Min(StringComparer.Ordinal);

    /// <summary>All that are nearest, without doubles.</summary>
    private static List<string> Nearest(string written, IEnumerable<(string Folded, string Spelling)> known)
    {
        var (name, nearest) = (NameFolding.Fold(written), new List<string>());
        if (name.Length > Longest)
        {
            return nearest;
        }

        // One slip in three letters, at most three in all: further away it is another word.
        var best = Math.Min(3, Math.Max(1, name.Length / 3));
        foreach (var (folded, spelling) in known)
        {
            var distance = EditDistance.Between(name, folded, best);
            if (distance < best)
            {
                nearest.Clear();
                best = distance;
            }

            if (distance == best && !nearest.Contains(spelling))
            {
                nearest.Add(spelling);
            }
        }

        return nearest;
    }

    private static IEnumerable<(string Folded, string Spelling)> Folded(IEnumerable<string> known) => known.Select(spelling => (NameFolding.Fold(spelling), spelling));
}
