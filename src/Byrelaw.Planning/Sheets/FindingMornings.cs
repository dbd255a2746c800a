using Byrelaw.Planning.LeadTimes;

namespace Byrelaw.Planning.Sheets;

/// <summary>
/// Mornings on which those who are asked about are scanned, scored or sampled: for each session as few as serve everyone, each as early as it can be. Whatever of an animal
/// can be found out on a morning is found out on it.
/// </summary>
internal static class FindingMornings
{
    public static IEnumerable<FindingSheet> Of(Plan plan, SheetHeads heads)
    {
        var work = Open(plan).ToList();
        foreach (var session in plan.Sessions)
        {
            foreach (var inTheYards in new[] { true, false })
            {
                var open = work.Where(one => one.Session == session.Number && IsInTheYards(one.Work.Kind) == inTheYards).ToList();
                while (open.Count > 0)
                {
                    var day = Morning([.. open.Select(one => one.Work)]);
                    var now = open.Where(one => one.Work.Holds(day)).ToList();
                    open.RemoveAll(now.Contains);
                    yield return new(day, session, heads.InCalf(day), heads.Reach(ProgrammeLists.Treatment(session.Session.Programme)), inTheYards)
                    {
                        Rows =
                        [
                            .. now.GroupBy(one => one.Animal).Select(hers => new FindingRow(heads.Animal(hers.Key), [.. hers.Select(one => one.Work).DistinctBy(one => one.Kind.Id)]))
                                .OrderBy(row => row.Who.Number, AnimalNumberOrder.Instance),
                        ],
                    };
                }
            }
        }
    }

    /// <summary>All that may be found out on one day, of whom it is asked: each animal under the first session that it serves.</summary>
    public static IEnumerable<FindingSheet> On(Plan plan, SheetHeads heads, LocalDate day)
    {
        var now = Open(plan).Where(one => one.Work.Holds(day)).OrderBy(one => one.Session).DistinctBy(one => (one.Animal, one.Work.Kind.Id)).ToList();
        foreach (var session in plan.Sessions)
        {
            foreach (var inTheYards in new[] { true, false })
            {
                FindingRow[] rows = [.. now.Where(one => one.Session == session.Number && IsInTheYards(one.Work.Kind) == inTheYards).GroupBy(one => one.Animal)
                    .Select(hers => new FindingRow(heads.Animal(hers.Key), [.. hers.Select(one => one.Work)])).OrderBy(row => row.Who.Number, AnimalNumberOrder.Instance)];
                if (rows.Length > 0)
                {
                    yield return new(day, session, heads.InCalf(day), heads.Reach(ProgrammeLists.Treatment(session.Session.Programme)), inTheYards) { Rows = [.. rows] };
                }
            }
        }
    }

    /// <summary>The earliest day that serves as many as the last day of the one who can wait least does.</summary>
    private static LocalDate Morning(ImmutableArray<WorkToDo> open)
    {
        var last = open.Min(one => one.Last);
        var together = open.Where(one => one.Holds(last)).ToList();
        return together.SelectMany(one => one.Days.Select(run => run.Start)).Where(day => day <= last && together.TrueForAll(one => one.Holds(day))).Append(last).Min();
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
                    yield return (task.Session, herd.Find(animal.Number), new(kind, days, animal.MoreOfTheMob) { Waiting = animal.Waiting });
                }
            }

            settled.UnionWith(task.WithoutADay.SelectMany(number => task.Task.SettlesKinds.Select(kind => (number, kind.Name))));
        }

        var asked = new HashSet<(string Number, string Kind)>();
        foreach (var session in plan.Sessions)
        {
            foreach (var one in session.ToAsk.Concat(session.WatchedIfKnown).SelectMany(animal => animal.ToFindOut.Select(find => (Animal: animal, Find: find))))
            {
                ImmutableArray<DateInterval> days = [.. one.Find.Starts];
                if (one.Find.Record is { IsTaken: true } record && !days.IsEmpty && Finding(herd, record.Kind.Name) is { } kind && !settled.Contains((one.Animal.Number, record.Kind.Name)) && asked.Add((one.Animal.Number, record.Kind.Name)))
                {
                    yield return (session.Number, one.Animal.Animal, new(kind, days, record.MoreOfTheMob) { Waiting = one.Find.Waiting });
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
