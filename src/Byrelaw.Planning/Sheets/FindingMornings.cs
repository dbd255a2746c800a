using Byrelaw.Planning.LeadTimes;

namespace Byrelaw.Planning.Sheets;

/// <summary>
/// Mornings on which those who are asked about are scanned, scored or sampled: as few as serve everyone of all sessions, each as early as it can be, but where it costs no further morning
/// not so early that a transfer that slips by a day or two spoils it. Whatever of an animal can be found out on a morning is found out on it.
/// </summary>
internal static class FindingMornings
{
    public static IEnumerable<FindingSheet> Of(Plan plan, SheetHeads heads)
    {
        var work = Open(plan).ToList();
        foreach (var inTheYards in new[] { true, false })
        {
            var open = work.Where(one => IsInTheYards(one.Work.Kind) == inTheYards).ToList();
            while (open.Count > 0)
            {
                var day = Morning([.. open.Select(one => one.Work)]);
                var now = open.Where(one => one.Work.Holds(day)).ToList();
                open.RemoveAll(now.Contains);
                foreach (var sheet in Sheets(plan, heads, day, now, inTheYards))
                {
                    yield return sheet;
                }
            }
        }
    }

    /// <summary>All that may be found out on one day, of whom it is asked.</summary>
    public static IEnumerable<FindingSheet> On(Plan plan, SheetHeads heads, LocalDate day)
    {
        var now = Open(plan).Where(one => one.Work.Holds(day)).ToList();
        return [.. Of(true), .. Of(false)];

        IEnumerable<FindingSheet> Of(bool inTheYards) => Sheets(plan, heads, day, [.. now.Where(one => IsInTheYards(one.Work.Kind) == inTheYards)], inTheYards);
    }

    /// <summary>A morning's sheets of one kind of work. An animal stands on one of them, that of the earliest session that she serves, with all that is found out of her.</summary>
    private static IEnumerable<FindingSheet> Sheets(Plan plan, SheetHeads heads, LocalDate day, List<(int Session, int Animal, WorkToDo Work)> now, bool inTheYards)
    {
        var hers = now.GroupBy(one => one.Animal).Select(one => (Session: one.Min(work => work.Session), Animal: one.Key, Work: one.OrderBy(work => work.Session).Select(work => work.Work).DistinctBy(work => work.Kind.Id))).ToList();
        foreach (var session in plan.Sessions.Where(session => hers.Exists(one => one.Session == session.Number)))
        {
            yield return new(day, session, heads.InCalf(day), heads.Reach(ProgrammeLists.Treatment(session.Session.Programme)), inTheYards)
            {
                Rows = [.. hers.Where(one => one.Session == session.Number).Select(one => Row(session, heads, one.Animal, one.Work)).OrderBy(row => row.Who.Number, AnimalNumberOrder.Instance)],
            };
        }
    }

    private static FindingRow Row(NamedSession session, SheetHeads heads, int animal, IEnumerable<WorkToDo> work)
    {
        var watched = session.WatchedIfKnown.FirstOrDefault(one => one.Animal == animal);
        return new(heads.Animal(animal), [.. work]) { Method = (watched ?? session.ToAsk.FirstOrDefault(one => one.Animal == animal))?.Method ?? "", IsWatched = watched is not null };
    }

    /// <summary>The earliest day that serves as many as the last day of the one who can wait least does.</summary>
    private static LocalDate Morning(ImmutableArray<WorkToDo> open)
    {
        var last = open.Min(one => one.Last);
        var together = open.Where(one => one.Holds(last)).ToList();
        var days = together.SelectMany(one => one.Days.Select(run => run.Start).Append(one.Steady)).Where(day => day <= last && together.TrueForAll(one => one.Holds(day))).Append(last).Distinct().Order().ToList();
        return days.Find(day => together.TrueForAll(one => day >= one.Steady)) is var steady && steady != default ? steady : days[0];
    }

    /// <summary>All that is to be found out of animals on days of their own: in the days of the task that settles it, or of what no task settles in those that do.</summary>
    private static IEnumerable<(int Session, int Animal, WorkToDo Work)> Open(Plan plan)
    {
        var herd = plan.Draft.Herd;
        var tasks = plan.Calendar.Tasks.Where(task => !task.IsDone && !task.Task.IsDecision).ToList();
        var settled = new HashSet<(string Number, string Kind)>();
        foreach (var task in tasks)
        {
            foreach (var animal in task.Animals.Where(animal => animal.Subject is not null))
            {
                var days = animal.Days.IsEmpty && task is { IsPast: false } ? Said(task, plan.Today) : animal.Days;
                settled.Add((animal.Number, animal.Subject!));
                if (Finding(herd, animal.Subject!) is { } kind && !days.IsEmpty)
                {
                    yield return (task.Session, herd.Find(animal.Number), new(kind, days, animal.MoreOfTheMob) { Waiting = animal.Waiting, Steady = animal.Steady ?? days[0].Start });
                }
            }
        }

        var asked = new HashSet<(string Number, string Kind)>();
        foreach (var session in plan.Sessions)
        {
            foreach (var one in session.ToAsk.Concat(session.WatchedIfKnown).SelectMany(animal => animal.ToFindOut.Select(find => (Animal: animal, Find: find))))
            {
                ImmutableArray<DateInterval> days = [.. one.Find.Starts];
                if (one.Find.Record is { IsTaken: true } record && !days.IsEmpty && Finding(herd, record.Kind.Name) is { } kind && !settled.Contains((one.Animal.Number, record.Kind.Name)) && asked.Add((one.Animal.Number, record.Kind.Name)))
                {
                    yield return (session.Number, one.Animal.Animal, new(kind, days, record.MoreOfTheMob) { Waiting = one.Find.Waiting, Steady = one.Find.Steady ?? days[0].Start });
                }
            }
        }
    }

    /// <summary>Of one without days of her own: from today, or the day before which it does not count, to its last day.</summary>
    private static ImmutableArray<DateInterval> Said(TaskDates task, LocalDate today) =>
        LocalDate.Max(today, task.Earliest ?? today) is var first && first <= task.LastStart ? [new(first, task.LastStart)] : [];

    /// <summary>A measure or a test; null for an event, which nobody finds out of an animal that stands in the yards.</summary>
    private static Kind? Finding(Herd herd, string name) => herd.Vocabulary.FindKind(name) is { Declaration: MeasureKind or TestKind } kind ? kind.Declaration : null;

    private static bool IsInTheYards(Kind kind) => kind is MeasureKind { InTheYards: true } or TestKind { InTheYards: true };
}
