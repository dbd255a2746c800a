namespace Byrelaw.Reporting.Words;

/// <summary>A or an, by how the word sounds.</summary>
public static class Article
{
    /// <summary><c>a uterine check</c>, <c>an ovary check</c>, <c>an FSH level</c>.</summary>
    public static string With(string noun) => $"{(StartsWithVowelSound(noun) ? "an" : "a")} {noun}";

    private static bool StartsWithVowelSound(string noun)
    {
        if (noun.Length == 0)
        {
            return false;
        }

        var first = char.ToUpperInvariant(noun[0]);
        if (noun.Length > 1 && char.IsUpper(noun[0]) && char.IsUpper(noun[1]))
        {
            return "AEFHILMNORSX".Contains(first);
        }

        // Uterus, urine, unit begin with a sound like "you"; udder and ulcer do not.
        return "AEIO".Contains(first) || (first == 'U' && !(noun.Length > 2 && "aeiou".Contains(noun[2])));
    }
}
