using Byrelaw.Planning.LeadTimes;

namespace Byrelaw.Reporting.Plans;

/// <summary>What was said of a decision to go on or to stop.</summary>
internal static class DecisionWords
{
    /// <summary>All decisions, by the day.</summary>
    public static IEnumerable<TaskDates> Of(Plan plan) => plan.Calendar.Tasks.Where(task => task.Task.IsDecision).OrderBy(task => task.Due);

    /// <summary>What was said, for programs; null before its day.</summary>
    public static string? Key(Plan plan, TaskDates task) =>
        StoppedOf(plan, task.Session) is not null ? "stopped" : task.SaidDone is not null ? "go" : task.Due < plan.Today ? "nothing" : null;

    /// <summary><c>go, on 2 October 2026</c>; <c>Nobody has said go.</c>; empty where its day is to come.</summary>
    public static string Said(Plan plan, TaskDates task) =>
        StoppedOf(plan, task.Session) is not null ? "stopped"
        : task.SaidDone is { } done ? $"go, on {Dates.Long(done.On)}"
        : task.Due < plan.Today ? Silence : "";

    /// <summary>Past its day, silence is said.</summary>
    public const string Silence = "Nobody has said go.";

    /// <summary>Decisions whose day is past and on which nobody said anything, of sessions that are not stopped.</summary>
    public static IEnumerable<TaskDates> Silent(Plan plan) =>
        plan.Calendar.Tasks.Where(task => task.Task.IsDecision && task.SaidDone is null && task.Due < plan.Today && StoppedOf(plan, task.Session) is null);

    /// <summary>The same of a draft, by the day that its records reach: the decision and its day.</summary>
    public static IEnumerable<string> Silent(Draft draft, ImmutableArray<Planning.Naming.NamedSession> named)
    {
        var plans = draft.Rulebook.Plans;
        return from session in named
               where plans.Stopped.All(one => one.Session != session.Number)
               from task in plans.Tasks
               where task is { IsDecision: true, IsNotNeeded: false } && (task.EachSession || session.Number == draft.Rulebook.Programme!.Session)
               let due = task.Due?.In(session.Session.Programme)
               where due < draft.Herd.KnownDay && !plans.Done.Any(done => done.Task == task.Name && (done.Session ?? 1) == session.Number)
               select $"{task.Name} (session {session.Number}), by {Dates.Long(due!.Value)}: {Phrases.Small(Silence)}";
    }

    /// <summary>The sessions that are given up, and why.</summary>
    public static IEnumerable<string> Stopped(Plan plan) => plan.Draft.Rulebook.Plans.Stopped.Select(one =>
        $"Session {one.Session} is stopped: {Phrases.Stop(one.Because)} Agreed by {Phrases.And([.. one.Agreement.By])} on {Dates.Long(one.Agreement.On)}. Nobody is treated for it any more; devices come out.");

    private static StoppedSession? StoppedOf(Plan plan, int session) => plan.Draft.Rulebook.Plans.Stopped.FirstOrDefault(one => one.Session == session);
}
