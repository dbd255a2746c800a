using Byrelaw.Language.Rulebooks.Words;

namespace Byrelaw.Language.Diagnostics;

/// <summary>Finds the known name that a misspelt one most likely meant.</summary>
internal static class NearestName
{
    private const int Longest = 60;

    /// <summary>The nearest of some names, as spelt there; null where none is near.</summary>
    public static string? Of(string written, IEnumerable<string> known)
    {
        var name = NameFolding.Fold(written);
        if (name.Length > Longest)
        {
            return null;
        }

        // One slip in three letters, at most three in all: further away it is another word.
        var best = Math.Min(3, Math.Max(1, name.Length / 3)) + 1;
        string? nearest = null;
        foreach (var candidate in known)
        {
            var distance = EditDistance.Between(name, NameFolding.Fold(candidate), best);
            if (distance < best || (distance == best && nearest is not null && string.CompareOrdinal(candidate, nearest) < 0))
            {
                (best, nearest) = (distance, candidate);
            }
        }

        return nearest;
    }
}
