namespace Byrelaw.Reporting.Pages;

/// <summary>Why a rule is there: what its names stand for, its reason and source, and what it was before this farm changed it.</summary>
public static class WhyRule
{
    /// <summary>One item of a list.</summary>
    public static Wording Of(RuleJudgement judged, AnimalReport report)
    {
        var rule = judged.Rule!;
        var lead = Wording.Bold($"{rule.Name}{(rule.IsSafety ? " (safety rule)" : "")}.");
        var words = string.Join(' ', Sentences(rule, report).Where(text => !string.IsNullOrEmpty(text)));
        var caution = SafetyNotes.For($"{rule.Name} {words}") is { } note ? Wording.Bold(note) : "";
        return $"{lead} {words} {caution}";
    }

    private static IEnumerable<string?> Sentences(Rule rule, AnimalReport report)
    {
        yield return Audience(rule);
        foreach (var define in ConditionWords.DefinesOf(rule.Needs, report.On.Rulebook))
        {
            yield return $"“{define.Name}” stands for: {ConditionWords.Of(define.Condition)}.";
        }

        yield return rule.IfNotKnown switch
        {
            IfNotKnown.Pass => "If not known, it lets her pass.",
            IfNotKnown.Exclude => "If not known, it keeps her out.",
            _ => null,
        };
        yield return rule.OnTheDay ? "Judged on the day, by the person beside her." : null;
        yield return rule.Because ?? "No reason is given.";
        yield return rule.Source is null ? null : $"Source: {rule.Source.TrimEnd('.')}.";
        if (rule.Before is { } before)
        {
            yield return $"Changed: {LocalPractice.Was(rule, before)}.";
            yield return before.Because is { } reason && reason != rule.Because ? $"The reason before: {reason}" : null;
        }
        else if (rule.Basis == Basis.Local)
        {
            yield return "This farm's own rule.";
        }

        yield return LocalPractice.Agreed(rule.Agreement);
        foreach (var earlier in ChangeHistory.Earlier(rule))
        {
            yield return earlier;
        }

        yield return ChangeHistory.Places(rule);
    }

    private static string? Audience(Rule rule) => RuleWords.Audience(rule) is { Length: > 0 } words ? $"Only {words}." : null;
}
