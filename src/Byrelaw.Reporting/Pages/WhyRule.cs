namespace Byrelaw.Reporting.Pages;

/// <summary>Why a rule is there: what its names stand for, its reason and source, and what it was before this farm changed it.</summary>
public static class WhyRule
{
    /// <summary>All of it, for the page of the rules.</summary>
    public static Wording Of(Rule rule, Rulebook rulebook)
    {
        ArgumentNullException.ThrowIfNull(rule);
        var words = Words([RuleWords.Audience(rule) is { Length: > 0 } audience ? $"Only {audience}." : null, .. Defined(rule, rulebook), .. Reasons(rule), .. ChangeHistory.Earlier(rule), ChangeHistory.Places(rule)]);
        var caution = SafetyNotes.For($"{rule.Name} {words}") is { } note ? Wording.Bold(note) : "";
        return $"{words} {caution}";
    }

    /// <summary>The reason, the source and what was changed, for an animal's page: what its names stand for stands on the page of the rules.</summary>
    public static Wording InShort(Rule rule) => $"{Wording.Bold($"{rule.Name}{(rule.IsSafety ? " (safety rule)" : "")}.")} {Words(Reasons(rule))}";

    private static IEnumerable<string?> Defined(Rule rule, Rulebook rulebook) =>
        ConditionWords.DefinesOf(rule.Needs, rulebook).Select(define => $"“{define.Name}” stands for: {ConditionWords.Of(define.Condition)}.");

    private static IEnumerable<string?> Reasons(Rule rule)
    {
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
    }

    private static string Words(IEnumerable<string?> sentences) => string.Join(' ', sentences.Where(text => !string.IsNullOrEmpty(text)));
}
