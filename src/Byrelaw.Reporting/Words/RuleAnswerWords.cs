using Byrelaw.Judging.Verdicts;

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

    /// <summary>Both: <c>✗ not met</c>.</summary>
    public static string Both(RuleAnswer answer) => $"{Shape(answer)} {Word(answer)}";
}
