using Byrelaw.Planning.FindingOut;

namespace Byrelaw.Planning.LeadTimes;

/// <summary>
/// A task for those who are to carry, or one for donors that settles something, in one session: for those who are asked about, each on the days of her own on which it does what it is for; of what settles nothing on
/// record for everyone who is named, asked about or spare. With a <c>due</c> the earlier of the two days counts.
/// </summary>
internal static class SessionTask
{
    /// <summary>The task in a session; null for a task of another list, or one whose date the programme does not set.</summary>
    public static TaskDates? Of(PlanTask task, NamedSession session, LocalDate today)
    {
        var programme = session.Session.Programme;
        var isForDonors = IsFor(task, ProgrammeLists.Donors(programme));
        if (!(isForDonors ? TaskDates.Settles(task) : IsForThem(task, programme)) || (task.Due is { } said && said.In(programme) is null))
        {
            return null;
        }

        var due = task.Due?.In(programme);
        if (!TaskDates.Settles(task))
        {
            var all = session.Named.Concat(session.ToAsk).Concat(session.Spares).Select(animal => new AnimalInNeed(animal.Number, Need.OnTheList, null, null, 0)).OrderBy(animal => animal.Number, AnimalNumberOrder.Instance);
            return due is { } day ? new TaskDates(task, day, day.PlusDays(-task.LeadDays), task.NotBefore?.In(programme), [.. all], true, Math.Max(0, Period.DaysBetween(day.PlusDays(-task.LeadDays), today)), null) { Session = session.Number } : null;
        }

        var asked = (isForDonors ? session.DonorsToAsk : session.ToAsk.Concat(session.WatchedIfKnown)).SelectMany(animal => animal.ToFindOut.Where(one => one.Record.IsTaken && IsSettledBy(task, one.Record)).Select(one => (Animal: animal, One: one))).ToList();
        var (first, last) = (task.NotBefore?.In(programme), due?.PlusDays(-task.LeadDays));
        var animals = asked.Select(one => Within(one.Animal.Number, one.One, first, last) with { WatchedBy = session.WatchedIfKnown.Contains(one.Animal) ? one.Animal.Method : "" }).ToList();
        ImmutableArray<AnimalInNeed> open = [.. animals.Where(animal => !animal.Days.IsEmpty).OrderBy(animal => animal.Number, AnimalNumberOrder.Instance)];
        if (isForDonors && open.IsEmpty && last < today)
        {
            // Past by its own due: that is told as of any task, with the collection that it would be in time for.
            return null;
        }

        var by = asked.Select(one => one.One.Days.IsEmpty ? (LocalDate?)null : one.One.Days[^1].End.PlusDays(one.One.Record.ResultsAfter)).Max();
        var inHand = due is { } then && !(by < then) ? then : by ?? due ?? (isForDonors ? session.Session.Donors!.Choice.JudgedFrom : session.Session.Days.FirstTransfer);
        return new TaskDates(task, inHand, open.IsEmpty ? inHand.PlusDays(-task.LeadDays) : open.Min(animal => animal.Days[^1].End), first, open, true, 0, null)
        {
            Session = session.Number,
            WithoutADay = [.. animals.Where(animal => animal.Days.IsEmpty).Select(animal => animal.Number).Order(AnimalNumberOrder.Instance)],
        };
    }

    private static bool IsForThem(PlanTask task, Programme programme) => IsFor(task, ProgrammeLists.Recipients(programme)) || IsFor(task, ProgrammeLists.Treatment(programme));

    /// <summary>Whether a task is for a list.</summary>
    public static bool IsFor(PlanTask task, Choice? choice) => choice is not null && task.List is { } list && NameFolding.Fold(choice.List) == NameFolding.Fold(list);

    /// <summary>Whether a task settles a record.</summary>
    public static bool IsSettledBy(PlanTask task, AskedRecord record) =>
        task.SettlesRules.Contains(record.Rule) || task.SettlesKinds.Any(kind => NameFolding.Fold(kind.Declaration.Name) == NameFolding.Fold(record.Kind.Name));

    private static AnimalInNeed Within(string number, ToFindOut one, LocalDate? first, LocalDate? last) => new(number, Need.Missing, one.Record.Kind.Name, one.Record.Rule, one.Record.MoreOfTheMob)
    {
        Waiting = one.Waiting,
        Steady = one.Steady,
        Days =
        [
            .. one.Starts.Select(run => (Start: first > run.Start ? first.Value : run.Start, End: last < run.End ? last.Value : run.End))
                .Where(run => run.Start <= run.End).Select(run => new DateInterval(run.Start, run.End)),
        ],
    };
}
