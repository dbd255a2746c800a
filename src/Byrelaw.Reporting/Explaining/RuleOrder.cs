namespace Byrelaw.Reporting.Explaining;

/// <summary>The order in which an animal's rules are shown.</summary>
public static class RuleOrder
{
    /// <summary>What is in the way first, then what is met, then what is not for her; each in the files' order.</summary>
    public static IEnumerable<RuleJudgement> Of(AnimalJudgement animal) => animal.Rules.OrderBy(Place);

    private static int Place(RuleJudgement rule) => rule switch
    {
        { InTheWay: true, Answer: RuleAnswer.Broken } => 0,
        { InTheWay: true, Answer: RuleAnswer.NotMet } => 1,
        { InTheWay: true } => 2,
        { Rule.OnTheDay: true } => 4,
        { Answer: RuleAnswer.DoesNotApply } => 5,
        _ => 3,
    };
}
