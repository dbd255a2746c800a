using Byrelaw.Language.Floors;

namespace Byrelaw.Judging.Lists;

/// <summary>The floor's rules, for one list and one thread.</summary>
/// <param name="Rules">Ready to be asked; none where the files have no words for them.</param>
/// <param name="LiesUnder">Whether the list's answers rest on them.</param>
/// <param name="Cover">Which of them its own safety rules ask too.</param>
internal sealed record FloorOfList(ImmutableArray<RuleCriterion> Rules, bool LiesUnder, Lazy<FloorCover> Cover)
{
    /// <summary>The rules that stand in her table: those that no rule of the list asks, and one that is in the way where none of those that ask it is.</summary>
    public IEnumerable<RuleCriterion> Standing(IReadOnlyList<RuleJudgement> own, Func<RuleCriterion, Truth> truthOf)
    {
        foreach (var rule in LiesUnder ? Rules : [])
        {
            var by = Cover.Value.Of(rule.Rule);
            if (by.IsEmpty || (truthOf(rule) != Truth.True && !own.Any(judged => judged.InTheWay && by.Contains(judged.Name))))
            {
                yield return rule;
            }
        }
    }

    /// <summary>What its rules say of one animal, whatever the list says of her.</summary>
    public InCalf Of(Func<RuleCriterion, Truth> truthOf)
    {
        var all = Truth.True;
        foreach (var rule in Rules)
        {
            var truth = truthOf(rule);
            all = truth == Truth.False || all == Truth.True ? truth : all;
            if (all == Truth.False)
            {
                return InCalf.TakeAsInCalf;
            }
        }

        return all == Truth.True ? InCalf.NotTold : InCalf.MayBe;
    }
}
