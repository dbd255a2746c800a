namespace Byrelaw.Records.Spellings;

/// <summary>
/// Finds names of mobs that one animal alone is given, in all the records, and that are one slip of the pen away from another that stands there, or hold all of its words: nobody can tell
/// whether it is a mob of its own, in which a bull, or a cow, would stand alone. A name that is written twice of the same animal is one person's habit, and no mob the more.
/// </summary>
internal static class MobSlips
{
    // A shorter word that differs is what tells two mobs apart, as in `Heifers A` and `Heifers B`.
    private const int ShortestWord = 3;

    private static readonly char[] Between = ['/', '&', '+', ',', ';', '|'];

    /// <summary>For each such mob the one that is perhaps meant; itself where any other may be.</summary>
    /// <param name="names">By number.</param>
    /// <param name="given">The mob of each cell and each move, by number, less than 0 for none; and to whom it is given: an animal, or any other number for a mob whose move it is.</param>
    /// <param name="spoken">The mob that each row is about, in the same way: it names a mob, and gives it to nobody.</param>
    /// <param name="meansOthers">Whether a mob that one animal alone is given means others by its name.</param>
    public static Dictionary<int, int> Of(IReadOnlyList<string> names, IEnumerable<(int Mob, int Whose)> given, IEnumerable<int> spoken, Func<int, int, bool>? meansOthers = null)
    {
        var (times, isOnes, whose) = Times(names.Count, given);
        var (rows, _, _) = Times(names.Count, spoken.Select(mob => (mob, 0)));
        var slips = new Dictionary<int, int>();
        int[] named = [.. Enumerable.Range(0, times.Length).Where(mob => times[mob] + rows[mob] > 0).OrderByDescending(mob => times[mob] + rows[mob])];
        foreach (var once in named.Where(mob => isOnes[mob]))
        {
            foreach (var other in named)
            {
                if (other != once && !slips.ContainsKey(once) && IsSlip(names[once], names[other]))
                {
                    slips.Add(once, other);
                }
            }
        }

        foreach (var once in named.Where(mob => isOnes[mob] && meansOthers?.Invoke(mob, whose[mob]) == true))
        {
            slips.TryAdd(once, once);
        }

        // Two names in one cell are two mobs, and nobody knows which of them.
        var byName = Enumerable.Range(0, names.Count).GroupBy(mob => AlikeText.OfMob(names[mob])).ToDictionary(mobs => mobs.Key, mobs => mobs.First(), StringComparer.Ordinal);
        foreach (var several in Enumerable.Range(0, times.Length).Where(mob => times[mob] > 0 && names[mob].Split(Between).Length > 1))
        {
            string[] parts = [.. names[several].Split(Between, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Select(AlikeText.OfMob)];
            if (parts.Length > 1 && Array.TrueForAll(parts, part => byName.TryGetValue(part, out var other) && other != several))
            {
                slips[several] = byName[parts[0]];
            }
        }

        return slips;
    }

    /// <summary>How often each is named, and whether it is so and all of it is one's, and whose.</summary>
    private static (int[] Times, bool[] AreOnes, int[] Whose) Times(int mobs, IEnumerable<(int Mob, int Whose)> named)
    {
        var (times, whose, areOnes) = (new int[mobs], new int[mobs], new bool[mobs]);
        foreach (var (mob, one) in named)
        {
            if (mob >= 0)
            {
                areOnes[mob] = times[mob] == 0 || (areOnes[mob] && whose[mob] == one);
                whose[mob] = one;
                times[mob]++;
            }
        }

        return (times, areOnes, whose);
    }

    private static bool IsSlip(string name, string other)
    {
        var (words, others) = (Words(name), Words(other));
        return Digits(name) == Digits(other)
            && (words.Length != others.Length || words.Zip(others).All(pair => pair.First == pair.Second || Math.Min(pair.First.Length, pair.Second.Length) >= ShortestWord))
            && (NearestName.To(name, [other]) is not null || HoldsAll(words, others) || HoldsAll(others, words));
    }

    /// <summary><c>River cows</c> may be <c>River</c>, and <c>Hill mob</c> may be <c>Hill</c>.</summary>
    private static bool HoldsAll(string[] words, string[] fewer) => words.Length > fewer.Length && Array.TrueForAll(fewer, words.Contains) && Array.TrueForAll(words, word => word.All(char.IsLetterOrDigit));

    private static string[] Words(string name) => NameFolding.Fold(name).Split(' ');

    private static string Digits(string name) => string.Concat(name.Where(char.IsDigit));
}
