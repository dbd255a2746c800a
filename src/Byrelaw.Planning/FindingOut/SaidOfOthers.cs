using Byrelaw.Language.Rulebooks.Conditions;

namespace Byrelaw.Planning.FindingOut;

/// <summary>
/// Which records say something of other animals too: samples from which a mob is judged, and lines that may be anybody's. Supposed of one animal, they would speak for another whose
/// answer is to be proved by her own.
/// </summary>
/// <param name="rulebook">The rules.</param>
/// <param name="herd">The records.</param>
internal sealed class SaidOfOthers(Rulebook rulebook, Herd herd)
{
    private readonly HashSet<int> _kinds = [.. rulebook.Rules.Where(rule => !rule.IsBroken).SelectMany(rule => rule.Needs.Leaves(rulebook).Concat(rule.AppliesTo?.Leaves(rulebook) ?? [])).Select(OfHerMob).OfType<int>()];
    private readonly HashSet<int> _lines = [.. herd.Coverage.Gaps.Where(gap => gap.Animal < 0).Select(gap => gap.Line)];

    /// <summary>Whether a mob is judged by results of a kind.</summary>
    public bool IsOfMobs(Kind kind) => _kinds.Contains(kind.Id);

    /// <summary>What some records say of others, so that those who suppose the same can be judged together; empty for nothing.</summary>
    public string Of(IEnumerable<AskedRecord> records) => string.Join('\n', records.Where(record => IsOfMobs(record.Kind) || _lines.Contains(record.WithoutLine))
        .Select(record => $"{record.Kind.Id} {record.Date} {record.Value} {record.WithoutLine} {string.Join(',', record.Of)}").Order(StringComparer.Ordinal));

    private static int? OfHerMob(Condition leaf) => leaf switch
    {
        MobMeasuredCondition mob => mob.Measure.Declaration.Id,
        MobCountCondition mob => mob.Measure.Declaration.Id,
        _ => null,
    };
}
