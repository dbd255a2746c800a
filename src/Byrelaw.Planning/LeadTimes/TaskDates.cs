namespace Byrelaw.Planning.LeadTimes;

/// <summary>A task with its last day, worked back from when it must be finished.</summary>
/// <param name="Task">The task.</param>
/// <param name="Due">By this day it is finished, results in hand.</param>
/// <param name="LastStart">The last day on which to start (to take the samples); of several animals with days of their own, the earliest last day.</param>
/// <param name="Earliest">Before this day it does not count; null for no limit.</param>
/// <param name="Animals">Whom it is for, by number; empty for a task of the farm, or where nobody needs it.</param>
/// <param name="IsForAnimals">Whether it is for animals at all: then an empty list means that nobody needs it any more.</param>
/// <param name="DaysPast">By how many days its last day has passed; 0 where it has not.</param>
/// <param name="InTimeFor">Where its last day has passed: the first day of collection (or first transfer) for which starting today is in time.</param>
public sealed record TaskDates(
    PlanTask Task, LocalDate Due, LocalDate LastStart, LocalDate? Earliest,
    ImmutableArray<AnimalInNeed> Animals, bool IsForAnimals, int DaysPast, LocalDate? InTimeFor)
{
    /// <summary>Whether its last day has passed and somebody still needs it.</summary>
    public bool IsPast => DaysPast > 0 && !IsDone;

    /// <summary>Which session it is for: the first, unless it is to be done for each.</summary>
    public int Session { get; init; } = 1;

    /// <summary>Whether it stands for one session among several.</summary>
    public bool IsOfASession => Task.EachSession || !ByHer.IsEmpty || Session > 1;

    /// <summary>What the farm's file says is done; null for nothing.</summary>
    public TaskDone? SaidDone { get; init; }

    /// <summary>Animals that need it and have no day left: what it is due by, or may not be before, leaves none of the days on which it would do.</summary>
    public ImmutableArray<string> WithoutADay { get; init; } = [];

    /// <summary>Animals of which the sample is taken, and only its result awaited.</summary>
    public ImmutableArray<AnimalInNeed> Awaited { get; init; } = [];

    /// <summary>Animals together that have the same days; empty where animals have no days of their own.</summary>
    public ImmutableArray<(ImmutableArray<DateInterval> Days, ImmutableArray<AnimalInNeed> Animals)> ByHer =>
    [
        .. Animals.Where(animal => !animal.Days.IsEmpty).GroupBy(animal => string.Join(';', [animal.WatchedBy, .. animal.Days.Select(run => $"{run}"), .. animal.AlsoFor.Select(also => $"{also}"), .. animal.Waiting.Select(waiting => $"{waiting.Session} {string.Join(',', waiting.Numbers)} {waiting.BackInTime}")]))
            .Select(group => (group.First().Days, group.ToImmutableArray())).OrderBy(one => one.Days[^1].End).ThenBy(one => one.Days[0].Start),
    ];

    /// <summary>Whether nobody need do it any more: it is for animals and none of them needs it, or it is the farm's and the file says that it is done. Of what settles records
    /// only the book says so.</summary>
    public bool IsDone => IsForAnimals ? Animals.IsEmpty || (SaidDone is not null && !Settles(Task)) : SaidDone is not null;

    /// <summary>Whether a record that is asked for is one that the task settles.</summary>
    public bool Settles(FindingOut.AskedRecord record) => SessionTask.IsSettledBy(Task, record);

    internal static bool Settles(PlanTask task) => !task.SettlesRules.IsEmpty || !task.SettlesKinds.IsEmpty;

    /// <summary>
    /// All tasks that arise, by their last day. A task whose date the programme does not set does not arise, nor one that is not needed, nor one for a list
    /// that the programme does not draw up.
    /// </summary>
    /// <param name="plans">The tasks.</param>
    /// <param name="programme">Its dates.</param>
    /// <param name="lists">The programme's lists, judged on its own dates.</param>
    /// <param name="today">The day of planning.</param>
    /// <param name="sessions">The sessions with those who are named: tasks for those who are to carry are for them, session by session, each in her own days. None where
    /// nobody is named: then a task is for whoever's records it settles.</param>
    public static ImmutableArray<TaskDates> Of(
        PlanStatements plans, Programme programme, ImmutableArray<ListJudgement> lists, LocalDate today, params ImmutableArray<NamedSession> sessions)
    {
        ArgumentNullException.ThrowIfNull(plans);
        ArgumentNullException.ThrowIfNull(programme);
        return
        [
            .. plans.Tasks.Where(task => !task.IsNotNeeded).SelectMany(task => Of(task, programme, lists, today, sessions))
                .Select(task => task with { SaidDone = plans.Done.FirstOrDefault(done => done.Task == task.Task.Name && (done.Session ?? 1) == task.Session) })
                .OrderBy(task => task.LastStart).ThenBy(task => task.Task.Name, StringComparer.Ordinal).ThenBy(task => task.Session),
        ];
    }

    private static IEnumerable<TaskDates> Of(PlanTask task, Programme programme, ImmutableArray<ListJudgement> lists, LocalDate today, ImmutableArray<NamedSession> sessions)
    {
        if (task.List is not null && !sessions.IsEmpty)
        {
            return EarliestSession.Keep(
                [.. sessions.Select(session => SessionTask.Of(task, session, today) ?? (task.EachSession || session == sessions[0] ? Of(task, session.Session.Programme, session.Session.Lists, today) : null)).OfType<TaskDates>()]);
        }

        var later = task.EachSession ? sessions.Where(session => session.Number > programme.Session).Select(session => Of(task, session.Session.Programme, session.Session.Lists, today)) : [];
        return later.Prepend(Of(task, programme, lists, today)).OfType<TaskDates>();
    }

    private static TaskDates? Of(PlanTask task, Programme programme, ImmutableArray<ListJudgement> lists, LocalDate today)
    {
        var list = task.List is null ? null : lists.FirstOrDefault(list => NameFolding.Fold(list.Choice.List) == NameFolding.Fold(task.List));

        // Without a day of its own what it settles is needed when the list is judged.
        if ((task.Due is { } said ? said.In(programme) : list?.Choice.JudgedFrom) is not { } due || (task.List is not null && list is null))
        {
            return null;
        }

        var start = due.PlusDays(-task.LeadDays);
        var past = Math.Max(0, Period.DaysBetween(start, today));
        var moves = task.Due is null || Anchored(task.Due, programme);
        ImmutableArray<AnimalInNeed> animals = list is null ? [] : AnimalInNeed.Of(task, list);
        return new(
            task, due, start, task.NotBefore?.In(programme), animals.RemoveAll(animal => animal.IsAwaited), list is not null, past,
            past > 0 && moves && MovedProgramme.Anchor(programme) is { } anchor ? programme.Date(anchor)!.Value.PlusDays(past) : null)
        {
            Session = programme.Session,
            Awaited = [.. animals.Where(animal => animal.IsAwaited)],
        };
    }

    /// <summary>Whether a day moves with the programme's first date.</summary>
    private static bool Anchored(DayReference day, Programme programme)
    {
        var anchor = MovedProgramme.Anchor(programme);
        for (var steps = 0; day.Name is { } name && steps <= programme.Dates.Length; steps++)
        {
            if (NameFolding.Fold(name) == anchor)
            {
                return true;
            }

            if (programme.Dates.FirstOrDefault(date => NameFolding.Fold(date.Name) == NameFolding.Fold(name))?.From is not { } from)
            {
                return false;
            }

            day = from;
        }

        return false;
    }
}
