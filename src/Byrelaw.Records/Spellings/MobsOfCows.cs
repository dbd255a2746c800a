namespace Byrelaw.Records.Spellings;

/// <summary>
/// Names of mobs that speak of cows: a bull who alone is ever in <c>milkers</c> is with the cows, whatever their mob is called elsewhere. A paddock's name says nothing of who is in it. Common
/// practice, no source.
/// </summary>
internal static class MobsOfCows
{
    private static readonly ImmutableArray<string> Words = ["cow", "cows", "milker", "milkers", "milking", "heifer", "heifers", "dairy", "herd", "calvers", "springers", "dries", "dry", "females", "girls", "matings", "mating"];

    /// <summary>Whether a name does, and does not speak of bulls.</summary>
    public static bool IsCalledSo(string name) =>
        NameFolding.Fold(name).Split(' ') is var words && Array.Exists(words, word => Words.Contains(word)) && !Array.Exists(words, word => word.StartsWith("bull", StringComparison.Ordinal));
}
