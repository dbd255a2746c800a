namespace Byrelaw.Reporting.Explaining;

/// <summary>The rule to name first where there is room for one.</summary>
public static class ChiefRule
{
    /// <summary>Null where nothing is in the way.</summary>
    public static RuleJudgement? Of(AnimalReport report)
    {
        var inTheWay = report.InTheWay.ToList();
        return inTheWay.Find(rule => rule.Answer == RuleAnswer.Broken) ?? report.Animal.Answer switch
        {
            Answer.Later => inTheWay.MaxBy(rule => rule.TurnsOn ?? LocalDate.MinIsoValue),
            Answer.Ask => Ask(inTheWay),
            Answer.No => inTheWay.Find(rule => rule.Answer == RuleAnswer.NotMet && rule.TurnsOn is null)
                ?? inTheWay.Find(rule => rule.Answer == RuleAnswer.NotMet),
            _ => null,
        } ?? inTheWay.FirstOrDefault();
    }

    /// <summary>What is not known before what is not met, and safety before the rest.</summary>
    private static RuleJudgement? Ask(List<RuleJudgement> inTheWay) =>
        inTheWay.Find(rule => rule.Answer == RuleAnswer.NotKnown && rule.Rule?.IsSafety == true)
        ?? inTheWay.Find(rule => rule.Answer == RuleAnswer.NotKnown);
}
