using Byrelaw.Language.Rulebooks;
using Byrelaw.Language.Sources;

namespace Byrelaw.Language.Diagnostics;

/// <summary>What can be wrong with a task.</summary>
internal static class TaskProblems
{
    public static Diagnostic NoDue(SourceSpan at) => Problem.Error(
        "B1235", at, "this task has no day", "expected a line such as `due 45 days before first transfer`");

    public static Diagnostic TooLateByConstruction(SourceSpan at, int days) => Problem.Error(
        "B1236", at, "this task can never be done in time",
        $"what it takes and its results would have to start {(days == 1 ? "1 day" : $"{days} days")} before it may be done");

    public static Diagnostic DueAfterNeeded(SourceSpan at, string rule, string day) => Problem.Error(
        "B1237", at, $"this task is due after the rule {Quoted.Of(rule)} is judged", $"that is on {day}");

    public static Diagnostic UnknownRule(SourceSpan at, string name, string? near) => Problem.Error(
        "B1238", at, $"there is no rule {Quoted.Of(name)}", null, near is null ? null : $"did you mean {Quoted.Of(near)}?");

    public static Diagnostic NotNeededWithoutReason(SourceSpan at) => Problem.Error(
        "B1239", at, "a task that is not needed says why", null, "add `because \"...\"`");

    public static Diagnostic UnknownCost(SourceSpan at, string expected) => Problem.Error(
        "B1240", at, $"{Quoted.Of(at)} is not what this is paid for", expected);
}
