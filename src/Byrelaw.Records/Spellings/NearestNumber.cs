namespace Byrelaw.Records.Spellings;

/// <summary>Finds the animal that was perhaps meant, without going through the whole herd.</summary>
internal static class NearestNumber
{
    private const string Characters = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";

    /// <summary>The one known number that is one slip of the pen away; null where there is none, or several.</summary>
    public static string? To(string text, Func<string, bool> isKnown)
    {
        if (text.Length > 20)
        {
            return null;
        }

        var known = Slips(text).Where(isKnown).Distinct().Take(2).ToArray();
        return known is [var only] ? only : null;
    }

    private static IEnumerable<string> Slips(string text)
    {
        yield return text.TrimStart('0');
        yield return text.ToUpperInvariant();
        yield return text.ToLowerInvariant();
        yield return text.Replace(" ", "", StringComparison.Ordinal);
        for (var i = 0; i < text.Length; i++)
        {
            yield return text.Remove(i, 1);
            if (i + 1 < text.Length)
            {
                yield return text[..i] + text[i + 1] + text[i] + text[(i + 2)..];
            }
        }

        for (var i = 0; i <= text.Length; i++)
        {
            foreach (var c in Characters)
            {
                yield return text.Insert(i, c.ToString());
                if (i < text.Length)
                {
                    yield return text[..i] + c + text[(i + 1)..];
                }
            }
        }
    }
}
