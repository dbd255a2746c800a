using MathNet.Numerics.Distributions;

namespace Byrelaw.Judging.Tuning;

/// <summary>
/// What tells a group of animals from the rest of their list. A trait is told if at least half of the group have it, and a group of that size drawn
/// by lot would have it so often less than once in twenty times: Fisher's exact test, one-sided, the chance multiplied by the number
/// of traits looked at (Bonferroni), so that looking at many does not find something by itself.
/// </summary>
public static class InCommon
{
    /// <summary>Less likely than this by lot, a trait is told. Common practice, no source.</summary>
    public const double Bar = 0.05;

    /// <summary>The traits that are told, the least likely first.</summary>
    /// <param name="group">The traits of each animal of the group.</param>
    /// <param name="all">The traits of each animal of the list, the group among them.</param>
    public static ImmutableArray<CommonTrait> Of(IReadOnlyCollection<IReadOnlySet<Trait>> group, IReadOnlyCollection<IReadOnlySet<Trait>> all)
    {
        ArgumentNullException.ThrowIfNull(group);
        ArgumentNullException.ThrowIfNull(all);
        var looked = group.SelectMany(traits => traits).Distinct().ToList();
        return
        [
            .. looked.Select(trait =>
            {
                var (inGroup, inAll) = (group.Count(traits => traits.Contains(trait)), all.Count(traits => traits.Contains(trait)));
                return new CommonTrait(trait, inGroup, group.Count, inAll, all.Count, Math.Min(1, looked.Count * ByLot(inGroup, group.Count, inAll, all.Count)));
            })
            .Where(common => common.Chance < Bar && 2 * common.InGroup >= common.GroupSize)
            .OrderBy(common => common.Chance).ThenBy(common => common.Trait.Kind).ThenBy(common => common.Trait.Value, StringComparer.Ordinal),
        ];
    }

    /// <summary>The chance that of so many drawn by lot at least so many have a trait (Fisher's exact test, one-sided).</summary>
    public static double ByLot(int found, int drawn, int having, int all) =>
        Enumerable.Range(found, Math.Max(0, Math.Min(drawn, having) - found + 1)).Sum(count => Hypergeometric.PMF(all, having, drawn, count));
}
