using Byrelaw.Judging.Verdicts;

namespace Byrelaw.Reporting;

/// <summary>One animal on one list.</summary>
/// <param name="On">The list.</param>
/// <param name="Animal">Her judgement.</param>
public sealed record AnimalReport(ListReport On, AnimalJudgement Animal)
{
    /// <summary>The rules that stand between her and Ready, in their order.</summary>
    public IEnumerable<RuleJudgement> InTheWay => Animal.Rules.Where(rule => rule.InTheWay);
}
