namespace Byrelaw.Reporting.Words;

/// <summary>A rule's answer as a shape and a word.</summary>
public static class RuleAnswerWords
{
    /// <summary>The shape.</summary>
    public static string Shape(RuleAnswer answer) => answer switch
    {
        RuleAnswer.Met => "✓",
        RuleAnswer.NotMet => "✗",
        RuleAnswer.NotKnown => "?",
        RuleAnswer.DoesNotApply => "–",
        _ => "!",
    };

    /// <summary>The word.</summary>
    public static string Word(RuleAnswer answer) => answer switch
    {
        RuleAnswer.Met => "met",
        RuleAnswer.NotMet => "not met",
        RuleAnswer.NotKnown => "not known",
        RuleAnswer.DoesNotApply => "does not apply",
        _ => "broken",
    };

    /// <summary>The shape; a rule for the day is a box to tick by the person beside her, whatever the records say today.</summary>
    public static string Shape(RuleJudgement rule) => IsForTheDay(rule) ? "☐" : Shape(rule.Answer);

    private static bool IsForTheDay(RuleJudgement rule) =>
        rule.Rule?.OnTheDay == true && rule.Answer is not (RuleAnswer.DoesNotApply or RuleAnswer.Broken);
}
