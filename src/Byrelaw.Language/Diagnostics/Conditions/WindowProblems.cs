namespace Byrelaw.Language.Diagnostics;

/// <summary>Windows that say nothing, and values that are asked for the wrong way.</summary>
internal static class WindowProblems
{
    public static Diagnostic SinceWithoutLast(SourceSpan at, string name) => Problem.Error(
        "B0323", at, $"{Quoted.Of(name)} happens to animals again and again", "a name without `last` is a date of the programme", $"write `last {name}`")
        .Or(Proposal.Before(at, "last "));

    public static Diagnostic AgoWithOther(SourceSpan at) => Problem.Error(
        "B0328", at, "`ago` does not go with this comparison", "expected `at least N days ago` or `between N and M days ago`",
        "for the latest days write `in the last N days`")
        .OrAny(at.Text.Split(' ') is ["at", "most", var count, var unit, "ago"] ? [new Proposal(at, $"in the last {count} {unit}")] : []);

    public static Diagnostic IsWithNumber(SourceSpan at, string name) => Problem.Error(
        "B0329", at, $"{Quoted.Of(name)} is a number", "a number is compared", "write `exactly`, `at least`, `at most` or `between`")
        .OrAny(at.Text.StartsWith("is ", StringComparison.OrdinalIgnoreCase) ? [new Proposal(at with { Length = 2 }, "exactly")] : []);

    public static Diagnostic CompareWithWord(SourceSpan at, string name) => Problem.Error(
        "B0330", at, $"{Quoted.Of(name)} is not a number", "a word or a date is not compared", "write `is`, `is not` or `is one of`");

    public static Diagnostic OneDate(SourceSpan at, string name) => Problem.Error(
        "B0331", at, $"{Quoted.Of(name)} is a date", "expected `is` and one date such as `2026-10-19`");

    public static Diagnostic CountTheEvent(SourceSpan at, string name, string asTyped) => Problem.Error(
        "B0332", at, $"{Quoted.Of(name)} is an event", "an event is counted, or the time since it is",
        $"for none of it write {Quoted.Of($"no {asTyped}")}, for one or more {Quoted.Of($"at least 1 {asTyped}")}{(asTyped == name ? ", each with a window such as `in the last 30 days`" : "")}");

    public static Diagnostic AskForAResult(SourceSpan at, string name, string sort) => Problem.Error(
        "B0333", at, $"{Quoted.Of(name)} is {sort}", "a condition says which of its results it looks at",
        $"write `latest {name}`, and a window such as `in the last 60 days`: without one a result of any age counts");

    public static Diagnostic LatestOfATest(SourceSpan at, string name) => Problem.Error(
        "B0334", at, $"{Quoted.Of(name)} is a test", "a test has no lowest, highest or average", $"write `latest {name} ... is ...`, or for each of several `every {name} of the last 2 results is ...`")
        .OrAny(at.Text.Split(' ')[0] is "lowest" or "highest" or "average" ? [new Proposal(at with { Length = at.Text.IndexOf(' ', StringComparison.Ordinal) }, "latest")] : []);
}
