namespace Byrelaw.Workshop.Comparing.Mixing;

/// <summary>The defines of a mixed rulebook, each made when something first speaks of it, so that each comes after those it uses.</summary>
/// <param name="pairs">The defines of both.</param>
/// <param name="take">Which of a pair is asked for; null for neither.</param>
/// <param name="reword">Makes a condition one of the mixed rulebook.</param>
internal sealed class MixedDefines(List<Pair<Define>> pairs, Func<Pair<Define>, Define?> take, Func<Condition, Condition> reword)
{
    private readonly List<Define> _all = [];
    private readonly Dictionary<Pair<Define>, int> _made = new(ReferenceEqualityComparer.Instance);
    private readonly HashSet<Pair<Define>> _open = new(ReferenceEqualityComparer.Instance);

    /// <summary>Those that something speaks of.</summary>
    public ImmutableArray<Define> All => [.. _all];

    /// <summary>The place and name of a define that either rulebook has under this name.</summary>
    /// <returns>Null where the mixture goes round in a circle.</returns>
    public (int Index, string Name)? Find(string name)
    {
        var pair = pairs.Find(one => one.Old?.Name == name) ?? pairs.Find(one => one.New?.Name == name);
        if (pair is null || !_open.Add(pair))
        {
            return null;
        }

        if (!_made.TryGetValue(pair, out var index))
        {
            // Where neither is asked for but something speaks of it, the one that is there will do.
            var define = take(pair) ?? pair.Old ?? pair.New!;
            var condition = reword(define.Condition);
            index = _all.Count;
            _all.Add(define with { Name = pair.New?.Name ?? define.Name, Condition = condition, IsBroken = define.IsBroken || IsBroken(condition) });
            _made[pair] = index;
        }

        _open.Remove(pair);
        return (index, _all[index].Name);
    }

    /// <summary>Whether a condition of the mixed rulebook, or a define it speaks of, could not be read or reworded.</summary>
    public bool IsBroken(Condition condition) =>
        condition.Written().Any(one => one is BrokenCondition || (one is NamedCondition named && _all[named.Index].IsBroken));
}
