namespace Byrelaw.Language.Rulebooks.Examples;

/// <summary>How expected answers are written.</summary>
public static class ExpectedAnswerWords
{
    /// <summary>The words of a rule file.</summary>
    public static string Of(ExpectedAnswer answer) => answer switch
    {
        ExpectedAnswer.Met => "met",
        ExpectedAnswer.NotMet => "not met",
        ExpectedAnswer.NotKnown => "not known",
        ExpectedAnswer.DoesNotApply => "does not apply",
        ExpectedAnswer.True => "true",
        ExpectedAnswer.False => "false",
        ExpectedAnswer.Ready => "ready",
        ExpectedAnswer.OnCourse => "on course",
        ExpectedAnswer.Later => "later",
        ExpectedAnswer.Ask => "ask",
        _ => "no",
    };

    /// <summary>The answers that can be expected of something.</summary>
    public static ExpectedAnswer[] That(ExpectationOf of) => of switch
    {
        ExpectationOf.Rule => [ExpectedAnswer.Met, ExpectedAnswer.NotMet, ExpectedAnswer.NotKnown, ExpectedAnswer.DoesNotApply],
        ExpectationOf.Prefer => [ExpectedAnswer.Met, ExpectedAnswer.NotMet, ExpectedAnswer.NotKnown],
        ExpectationOf.Define => [ExpectedAnswer.True, ExpectedAnswer.False, ExpectedAnswer.NotKnown],
        _ => [ExpectedAnswer.Ready, ExpectedAnswer.OnCourse, ExpectedAnswer.Later, ExpectedAnswer.Ask, ExpectedAnswer.No],
    };
}
