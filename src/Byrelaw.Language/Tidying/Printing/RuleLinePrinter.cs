using Byrelaw.Language.Syntax.Lines;
using Byrelaw.Language.Tidying.Layouts;

namespace Byrelaw.Language.Tidying.Printing;

/// <summary>Lines inside rules, defines, preferences and what changes them.</summary>
internal static class RuleLinePrinter
{
    // As wide as the longer of the two, so that what they say starts in one column.
    private const string Because = "because";
    private const string Source = "source ";

    /// <summary>How it is set; null for other lines.</summary>
    public static Layout? Of(LineSyntax line) => line switch
    {
        AppliesToLine applies => new OneLine($"applies to {Words.Name(applies.Audience)}"),
        NeedsLine needs => new OneLine($"needs {ConditionPrinter.Of(needs.Condition)}"),
        ConditionLine condition => new OneLine(ConditionPrinter.Of(condition.Condition)),
        BulletLine bullet => new OneLine($"- {ConditionPrinter.Of(bullet.Condition)}"),
        CountsLine counts => new OneLine($"counts {Words.Number(counts.Points)}"),
        UntilLine until => new OneLine($"until {Words.Date(until.Until)}"),
        IfNotKnownLine instead => new OneLine($"if not known {instead.Instead.ToString().ToLowerInvariant()}"),
        OnTheDayLine => new OneLine("on the day"),
        BecauseLine because => new EndsWithText(Because, because.Reason.Value, RunsOn: true),
        SourceLine source => new EndsWithText(Source, source.Source.Value, RunsOn: true),
        AgreedByLine agreed => new OneLine($"agreed by {Words.Texts(agreed.By)} on {Words.Date(agreed.On)}"),
        _ => null,
    };
}
