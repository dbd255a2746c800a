using Byrelaw.Planning.FindingOut;
using Byrelaw.Planning.LeadTimes;

namespace Byrelaw.Planning.Naming;

/// <summary>
/// What a task says of its days narrows the days of a record that it settles, so that every page tells the same days of one record. Where that leaves none, the rules' own days stay: a
/// record late by the farm's task counts all the same, and the plan says so.
/// </summary>
internal static class DueDays
{
    /// <summary>The session with the days narrowed.</summary>
    public static NamedSession In(NamedSession session)
    {
        var programme = session.Session.Programme;
        ImmutableArray<PlanTask> tasks = [.. session.Session.Rulebook.Plans.Tasks.Where(task => !task.IsNotNeeded && TaskDates.Settles(task))];
        return session with
        {
            ToAsk = Narrowed(session.ToAsk, [ProgrammeLists.Recipients(programme), ProgrammeLists.Treatment(programme)]),
            WatchedIfKnown = Narrowed(session.WatchedIfKnown, [ProgrammeLists.Recipients(programme), ProgrammeLists.Treatment(programme)]),
            DonorsToAsk = Narrowed(session.DonorsToAsk, [ProgrammeLists.Donors(programme)]),
        };

        ImmutableArray<NamedAnimal> Narrowed(ImmutableArray<NamedAnimal> animals, Choice?[] lists)
        {
            var theirs = tasks.Where(task => lists.Any(list => SessionTask.IsFor(task, list))).ToList();
            return [.. animals.Select(animal => animal with { ToFindOut = [.. animal.ToFindOut.Select(one => theirs.Where(task => SessionTask.IsSettledBy(task, one.Record)).Aggregate(one, (narrowed, task) => Within(narrowed, task, programme)))] })];
        }
    }

    private static ToFindOut Within(ToFindOut asked, PlanTask task, Programme programme)
    {
        var (first, last) = (task.NotBefore?.In(programme)?.PlusDays(asked.Record.BegunBefore), task.Due?.In(programme)?.PlusDays(asked.Record.BegunBefore - task.LeadDays));
        ImmutableArray<DateInterval> days =
        [
            .. asked.Days.Select(run => (Start: first > run.Start ? first.Value : run.Start, End: last < run.End ? last.Value : run.End))
                .Where(run => run.Start <= run.End).Select(run => new DateInterval(run.Start, run.End)),
        ];
        return days.IsEmpty ? asked : asked with { Days = days };
    }
}
