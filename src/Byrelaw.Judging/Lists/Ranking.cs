namespace Byrelaw.Judging.Lists;

/// <summary>Ranks those who may be used: by points, ties by animal number.</summary>
internal static class Ranking
{
    /// <param name="animals">Sorted by number.</param>
    public static ImmutableArray<AnimalJudgement> Rank(ImmutableArray<AnimalJudgement> animals)
    {
        var ranked = animals.ToArray();
        var rank = 0;
        foreach (var place in Enumerable.Range(0, ranked.Length)
            .Where(i => ranked[i].Answer.MayBeUsed())
            .OrderByDescending(i => ranked[i].Score)
            .ThenBy(i => i))
        {
            ranked[place] = ranked[place] with { Rank = ++rank };
        }

        return [.. ranked];
    }
}
