using Byrelaw.Language.Sources;

namespace Byrelaw.Reporting.Pages;

/// <summary>How a rule came to be what it is: a change, the change that it changed, and so on down to where it was first written.</summary>
public static class ChangeHistory
{
    /// <summary>A sentence or two for each change before the latest, the later first; none for a rule that was changed once.</summary>
    public static IEnumerable<string> Earlier(Rule rule)
    {
        for (var version = rule.Before; version?.Before is { } before; version = before)
        {
            yield return Join($"Before that: {LocalPractice.Was(version, before)} ({Place(version.Span)}).", version.Because, LocalPractice.Agreed(version.Agreement));
        }
    }

    /// <summary>Where the latest version stands, and where the rule was first written.</summary>
    public static string Places(Rule rule)
    {
        var first = rule;
        while (first.Before is { } before)
        {
            first = before;
        }

        return rule.Span.File is null ? "" : ReferenceEquals(first, rule) ? $"({Place(rule.Span)})" : $"({Place(rule.Span)}; first written: {Place(first.Span)})";
    }

    /// <summary><c>base.byre line 8</c>.</summary>
    public static string Place(SourceSpan span) => span.File is null ? "place not known" : $"{span.File.Path} line {span.Line}";

    private static string Join(params string?[] sentences) => string.Join(' ', sentences.Where(sentence => !string.IsNullOrEmpty(sentence)));
}
