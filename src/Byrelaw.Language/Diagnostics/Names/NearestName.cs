namespace Byrelaw.Language.Diagnostics;

/// <summary>Finds the known name that a misspelt one most likely meant.</summary>
internal static class NearestName
{
    private const int Longest = 60;

    /// <summary>The nearest of some names, as spelt there; null where none is near.</summary>
    public static string? Of(string written, IEnumerable<string> known) =>
        Of(written, known.Select(spelling => (NameFolding.Fold(spelling), spelling)));

    /// <summary>The same for names that are folded already.</summary>
    public static string? Of(string written, IEnumerable<(string Folded, string Spelling)> known)
    {
        var name = NameFolding.Fold(written);
        if (name.Length > Longest)
        {
            return null;
        }

        // One slip in three letters, at most three in all: further away it is another word.
        var best = Math.Min(3, Math.Max(1, name.Length / 3)) + 1;
        string? nearest = null;
        foreach (var (folded, spelling) in known)
        {
            var distance = EditDistance.Between(name, folded, best);
            if (distance < best || (distance == best && nearest is not null && string.CompareOrdinal(spelling, nearest) < 0))
            {
                (best, nearest) = (distance, spelling);
            }
        }

        return nearest;
    }
}
