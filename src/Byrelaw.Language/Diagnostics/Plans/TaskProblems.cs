namespace Byrelaw.Language.Diagnostics;

/// <summary>What can be wrong with a task.</summary>
internal static class TaskProblems
{
    public static Diagnostic NoDue(SourceSpan at) => Problem.Error(
        "B1235", at, "this task has no day", "expected a line such as `due 45 days before first transfer`, or `settles` and what it settles");

    public static Diagnostic TooLateByConstruction(SourceSpan at, int days) => Problem.Error(
        "B1236", at, "this task can never be done in time",
        $"what it takes and its results would have to start {(days == 1 ? "1 day" : $"{days} days")} before it may be done",
        $"let `not before` be {(days == 1 ? "1 day" : $"{days} days")} earlier, or `due` as much later");

    public static Diagnostic DueAfterNeeded(SourceSpan at, string due, string rule, string judged) => Problem.Error(
        "B1237", at, $"this task is due on {due}, after the rule {Quoted.Of(rule)} is judged", $"that is on {judged}", $"let it be due by {judged}");

    public static Diagnostic UnknownRule(SourceSpan at, string name, string? near) => Problem.Error(
        "B1238", at, $"there is no rule {Quoted.Of(name)}", "in quotes `settles` names rules, without quotes what is on record",
        near is null ? null : $"did you mean {Quoted.Of(near)}?")
        .OrAny(near is null ? [] : [new Proposal(at, $"\"{near}\"")]);

    public static Diagnostic UnknownTask(SourceSpan at, string name, string? near) => Problem.Error(
        "B1241", at, $"there is no task {Quoted.Of(name)}", "`done` names a task of these files", near is null ? null : $"did you mean {Quoted.Of(near)}?")
        .OrAny(near is null ? [] : [new Proposal(at, $"\"{near}\"")]);

    /// <param name="at">The session, or the line that names none.</param>
    /// <param name="eachSession">Whether the task is to be done for each session.</param>
    public static Diagnostic SessionOfTask(SourceSpan at, bool eachSession) => Problem.Error(
        "B1242", at, eachSession ? "this does not say for which session it is done" : "this task is done once, for all sessions",
        eachSession ? "the task is to be done for `each session`" : "a session is named for a task with the line `each session`",
        eachSession ? "write `for session 1` after the day" : "take the session out");

    public static Diagnostic DoneLater(SourceSpan at, string day, string today) => Problem.Warning(
        "B1243", at, $"this is to be done on {day}, and today is {today}", "what is done is written down once it is done", "until then the task stands");

    /// <param name="at">The line that is there.</param>
    /// <param name="isDecided">Whether it says who decides, and not what then; else the other way round.</param>
    public static Diagnostic HalfADecision(SourceSpan at, bool isDecided) => Problem.Error(
        "B1232", at, isDecided ? "this says who may stop it, and not what becomes of the treated then" : "this says what becomes of the treated, and not who may stop it",
        "whoever stops must know what they stop", isDecided ? "add `if stopped \"...\"`: where do those go who are treated already?" : "add `decided by \"...\"`");

    /// <param name="at">The line.</param>
    /// <param name="why">Whether it is the reason that is missing; else who agreed.</param>
    public static Diagnostic StoppedWithout(SourceSpan at, bool why) => Problem.Error(
        "B1233", at, why ? "this stops a session, and does not say why" : "this stops a session, and nobody agreed to it", "whoever reads the plan must see that it was not forgotten",
        why ? "add `because \"...\"`" : "add `agreed by \"...\" on` and the day");

    public static Diagnostic NotNeededWithoutReason(SourceSpan at) => Problem.Error(
        "B1239", at, "this task is not needed, and does not say why", "whoever reads the plan must see that it was not forgotten", "add `because \"...\"`");

    /// <param name="at">What stands after <c>per</c>; the whole line where nothing does.</param>
    /// <param name="isSaid">Whether anything is said of what it is paid for.</param>
    /// <param name="expected">What would do.</param>
    /// <param name="meant">What is likely meant.</param>
    public static Diagnostic UnknownCost(SourceSpan at, bool isSaid, string expected, string meant) => Problem.Error(
        "B1240", at, isSaid ? $"{Quoted.Of(at)} is not what this is paid for" : $"{Quoted.Of(at)} does not say for what", expected)
        .Or(isSaid ? new Proposal(at, meant) : Proposal.After(at, $" per {meant}"));
}
