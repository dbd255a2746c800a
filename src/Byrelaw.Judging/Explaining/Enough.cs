namespace Byrelaw.Judging.Explaining;

/// <summary>
/// By what an answer may come to be the one that is wanted: each way is a set of things that is enough. Of <c>any of</c> one branch is enough, of <c>all of</c> every
/// branch that stands in the way is needed; under <c>not</c> it is the other way round.
/// </summary>
/// <typeparam name="T">Records that are missing, or what would turn a condition.</typeparam>
/// <param name="Sets">The ways, those of fewest things first; none where nothing is known that would do.</param>
internal readonly record struct Enough<T>(ImmutableArray<ImmutableArray<T>> Sets)
{
    /// <summary>More ways than so many nobody reads, and they would multiply.</summary>
    private const int Most = 24;

    /// <summary>Nothing would do.</summary>
    public static Enough<T> None { get; } = new([]);

    /// <summary>All of some things.</summary>
    public static Enough<T> All(IEnumerable<T> things)
    {
        ImmutableArray<T> all = [.. things.Distinct()];
        return all.IsEmpty ? None : new([all]);
    }

    /// <summary>One of the branches is to turn, or all of them.</summary>
    public static Enough<T> Together(IReadOnlyList<Enough<T>> branches, int needed) => needed == 1
        ? new(Fewest(branches.SelectMany(branch => branch.Sets)))
        : branches.Aggregate(new Enough<T>([[]]), (all, branch) => new(Fewest(all.Sets.SelectMany(one => branch.Sets.Select(other => one.AddRange(other.Where(thing => !one.Contains(thing))))))));

    /// <summary>Those of which no part would be enough.</summary>
    private static ImmutableArray<ImmutableArray<T>> Fewest(IEnumerable<ImmutableArray<T>> sets)
    {
        var fewest = new List<ImmutableArray<T>>();
        foreach (var set in sets.OrderBy(set => set.Length))
        {
            if (fewest.Count < Most && !fewest.Exists(less => less.All(set.Contains)))
            {
                fewest.Add(set);
            }
        }

        return [.. fewest];
    }
}
