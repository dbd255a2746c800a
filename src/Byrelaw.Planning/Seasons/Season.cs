using Byrelaw.Judging.Criteria;
using Byrelaw.Planning.LeadTimes;

namespace Byrelaw.Planning.Seasons;

/// <summary>
/// One season of a programme: its sessions, how the animals of its lists stand, who is named for which session, what must be done by when. It is made here, and
/// nowhere else; calendar, numbers, money, the comparison of visits and the pages read it.
/// </summary>
public sealed record Season
{
    private Season(Rulebook rulebook, LocalDate today, ImmutableArray<ListJudgement> lists, ImmutableArray<NamedSession> named, Func<Choice, ListStanding?> standing)
    {
        var programme = rulebook.Programme!;
        (Rulebook, Today, Named) = (rulebook, today, named);
        Sessions = Session.Of(programme);
        NumbersNamed = [.. named.Select(one => one.Number)];
        Tasks = TaskDates.Of(rulebook.Plans, programme, lists, today, named);
        Donors = ProgrammeLists.Donors(programme) is { } donors ? standing(donors) : null;
        Recipients = ProgrammeLists.Recipients(programme) is { } recipients
            ? standing(recipients)?.And(ProgrammeLists.Treatment(programme) is { } treatment ? standing(treatment) : null) : null;
    }

    /// <summary>The rules, with the programme on the days of its first session.</summary>
    public Rulebook Rulebook { get; }

    /// <summary>The day of planning: dates before it are past.</summary>
    public LocalDate Today { get; }

    /// <summary>Each collection and its transfers, those that are over among them.</summary>
    public ImmutableArray<Session> Sessions { get; }

    /// <summary>Who is made ready for which session, of those that are not over; none where no list of recipients is drawn up, or nobody asks who.</summary>
    public ImmutableArray<NamedSession> Named { get; init; }

    /// <summary>Their numbers, in the order of the forecast's sessions; all of them, also where only one session is told of.</summary>
    public ImmutableArray<int> NumbersNamed { get; }

    /// <summary>What must be done by when.</summary>
    public ImmutableArray<TaskDates> Tasks { get; }

    /// <summary>The donors of the first session; null where the programme draws up no list of them.</summary>
    public ListStanding? Donors { get; }

    /// <summary>Its recipients, each as she may be used on the transfer days and, where there is a list for it, treated; null where the programme draws up no list of them.</summary>
    public ListStanding? Recipients { get; }

    /// <summary>The season by name.</summary>
    /// <param name="draft">The programme's lists, judged on the days of its first session.</param>
    /// <param name="today">The day of planning.</param>
    public static Season Of(Draft draft, LocalDate today)
    {
        ArgumentNullException.ThrowIfNull(draft);
        var judge = new Judge(draft.Rulebook, draft.Herd, draft.KnownOn);
        return new(draft.Rulebook, today, draft.Lists, Namer.Name(draft, today), choice => Judged(draft.Lists, choice, day => DryCows.On(judge, day)));
    }

    /// <summary>One session by itself, before anybody is named for it.</summary>
    public static Season Of(JudgedSession session, LocalDate today)
    {
        ArgumentNullException.ThrowIfNull(session);
        return new(session.Rulebook, today, session.Lists, [], choice => Judged(session.Lists, choice, _ => session.Dry));
    }

    /// <summary>The season as it would be on one of several visits: quick enough for each of them, so only answers are asked for, and nobody is named.</summary>
    /// <param name="rulebook">With its programme moved to that visit.</param>
    /// <param name="herd">The records.</param>
    /// <param name="sorts">Cow or heifer, worked out once for all visits.</param>
    /// <param name="today">The day of planning.</param>
    internal static Season OnAVisit(Rulebook rulebook, Herd herd, Sorts sorts, LocalDate today)
    {
        var judge = new Judge(rulebook, herd);
        var standings = new Dictionary<string, ListStanding>(StringComparer.Ordinal);
        return new(
            rulebook, today, [.. PaidLists(rulebook).Select(judge.JudgeList)], [],
            choice => standings.TryGetValue(choice.List, out var known) ? known : standings[choice.List] = ListStanding.Of(judge, sorts, choice));
    }

    /// <summary>Only its days: nobody is judged.</summary>
    /// <param name="rulebook">With a programme.</param>
    /// <param name="today">The day of planning.</param>
    /// <param name="lists">Lists of which the tasks are to tell whom they are for.</param>
    public static Season OfDays(Rulebook rulebook, LocalDate today, params ImmutableArray<ListJudgement> lists)
    {
        ArgumentNullException.ThrowIfNull(rulebook);
        return new(rulebook, today, lists, [], _ => null);
    }

    private static ListStanding? Judged(ImmutableArray<ListJudgement> lists, Choice choice, Func<LocalDate, DryCows> dry) =>
        ProgrammeLists.Judged(lists, choice) is { } list ? ListStanding.Of(list, dry(choice.JudgedFrom)) : null;

    /// <summary>Lists with tasks that are paid for by the animal: how many need them is known only from the reasons, which take longer than the answers.</summary>
    private static IEnumerable<Choice> PaidLists(Rulebook rulebook)
    {
        var paid = rulebook.Plans.Tasks
            .Where(task => task is { IsNotNeeded: false, List: not null } && (task.Cost is not null || (task.ResultsTake is not null && rulebook.Plans.Cost(CostUnit.Sample) is not null)))
            .Select(task => NameFolding.Fold(task.List!)).ToHashSet();
        return rulebook.Programme!.Choices.Where(choice => paid.Contains(NameFolding.Fold(choice.List)));
    }
}
