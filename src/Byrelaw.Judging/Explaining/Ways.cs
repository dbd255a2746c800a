namespace Byrelaw.Judging.Explaining;

/// <summary>
/// By which records what is not known may come to be known as wanted: each way is a set of them that is enough. Of <c>any of</c> one branch is enough, of <c>all of</c> every
/// branch that is not known is needed; under <c>not</c> it is the other way round.
/// </summary>
/// <param name="Sets">The ways, those of fewest records first; none where no record is known that would do.</param>
internal readonly record struct Ways(ImmutableArray<ImmutableArray<Missing>> Sets)
{
    /// <summary>More ways than so many nobody reads, and they would multiply.</summary>
    private const int Most = 24;

    /// <summary>No record would do.</summary>
    public static Ways None { get; } = new([]);

    /// <summary>All of some records, as <see cref="Of(Missing)"/> them.</summary>
    public static Ways All(IEnumerable<Missing> records)
    {
        ImmutableArray<Missing> all = [.. records.Select(Of).Distinct()];
        return all.IsEmpty ? None : new([all]);
    }

    /// <summary>The record that is to be got: one result of a test may be what several conditions ask for, each on its days and by its method.</summary>
    public static Missing Of(Missing missing) => missing.Reason == MissingReason.NoResult ? missing with { From = null, To = null, Filter = "" } : missing;

    /// <summary>So many of the branches are to come true, or any of them all.</summary>
    public static Ways Together(IReadOnlyList<Ways> branches, int needed) => needed == 1
        ? new(Fewest(branches.SelectMany(branch => branch.Sets)))
        : branches.Aggregate(new Ways([[]]), (all, branch) => new(Fewest(all.Sets.SelectMany(one => branch.Sets.Select(other => one.AddRange(other.Where(record => !one.Contains(record))))))));

    /// <summary>Those of which no part would be enough.</summary>
    private static ImmutableArray<ImmutableArray<Missing>> Fewest(IEnumerable<ImmutableArray<Missing>> sets)
    {
        var fewest = new List<ImmutableArray<Missing>>();
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
