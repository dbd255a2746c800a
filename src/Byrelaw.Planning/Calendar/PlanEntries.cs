using System.Globalization;

namespace Byrelaw.Planning.Calendar;

/// <summary>Everything on a calendar as entries, each with what is wrong with its day.</summary>
/// <param name="calendar">As far as it is drawn up.</param>
/// <param name="aims">Holidays.</param>
/// <param name="named">Who is named for which session; where nobody is by name, every method has its days.</param>
internal sealed class PlanEntries(PlanCalendar calendar, Aims aims, ImmutableArray<NamedSession> named)
{
    /// <summary>By day, then by what they are about.</summary>
    public ImmutableArray<PlanEntry> InOrder() =>
    [
        .. All().Select(entry => entry with { Clashes = Clashes(entry) })
            .OrderBy(entry => entry.From).ThenBy(entry => entry.Kind).ThenBy(entry => entry.Id, StringComparer.Ordinal),
    ];

    private IEnumerable<PlanEntry> All() =>
    [
        .. calendar.Tasks.Where(task => !task.IsDone).Select(task => new PlanEntry(
            task.Session > 1 ? Id("task", task.Task.Name, Number(task.Session)) : Id("task", task.Task.Name), EntryKind.TaskStart, task.LastStart, task.LastStart,
            task.IsOfASession ? task.Session : null, task.Task.Name) { Task = task, Cautions = task.Task.Cautions }),
        .. calendar.CleanTimes.Select(time => new PlanEntry(Id("clean", time.Rule), EntryKind.CleanTime, time.From, time.To, null, time.Rule)),
        .. named.IsEmpty ? calendar.Treatments.SelectMany(treatment => Of(treatment, EntryKind.Treatment)) : named.SelectMany(OfThoseNamed),
        .. calendar.Donors.Where(treatment => Donors(treatment.Session) is not 0).SelectMany(treatment => Of(treatment, EntryKind.DonorTreatment, Donors(treatment.Session))),
        .. calendar.Sessions.SelectMany(Of),
        .. calendar.Calving.PlannedStartOfMating is { } start ? [new PlanEntry("start-of-mating", EntryKind.StartOfMating, start, start, null, null)] : (PlanEntry[])[],
        .. calendar.Calving.Sessions.Where(session => session.InCows is not null).Select(session => new PlanEntry(
            Id("calving", Number(session.Session.Number)), EntryKind.Calving, session.InCows!.From, session.InCows.To, session.Session.Number, null)),
    ];

    /// <summary>What will be done, and nothing else: methods by which somebody is named, booked or begun, on her own days, and watching for those who are watched.</summary>
    private static IEnumerable<PlanEntry> OfThoseNamed(NamedSession session)
    {
        foreach (var alike in session.Named.GroupBy(animal => (animal.Method, animal.Start)))
        {
            if (session.Session.Rulebook.Plans.Method(alike.Key.Method) is { } method)
            {
                var days = TreatmentCalendar.Of(method, session.Session.Days);
                foreach (var entry in Of(days.StartingOn(alike.Key.Start), EntryKind.Treatment, alike.Count()))
                {
                    yield return alike.Key.Start == days.Start ? entry : entry with { Id = $"{entry.Id}/{NodaTime.Text.LocalDatePattern.Iso.Format(alike.Key.Start)}" };
                }
            }
        }

        foreach (var entry in session.Methods.Where(method => method.Method.IsNatural && !session.Watched.IsEmpty).SelectMany(method => Of(method.Days, EntryKind.Treatment, session.Watched.Length)))
        {
            yield return entry;
        }
    }

    /// <summary>How many donors of a session are made ready; null where nobody is named by name, or no list of donors is drawn up.</summary>
    private int? Donors(int session) => named.FirstOrDefault(one => one.Number == session)?.Session is { Donors: not null } judged ? judged.Collected.Length : null;

    private static IEnumerable<PlanEntry> Of(Session session) =>
    [
        .. session.Collection is { } day ? [new PlanEntry(Id("collection", Number(session.Number)), EntryKind.Collection, day, day, session.Number, null)] : (PlanEntry[])[],
        new PlanEntry(Id("transfer", Number(session.Number)), EntryKind.Transfer, session.FirstTransfer, session.FinalTransfer, session.Number, null),
    ];

    private static IEnumerable<PlanEntry> Of(TreatmentCalendar treatment, EntryKind kind, int? animals = null)
    {
        var (name, session) = (treatment.Method.Name, treatment.Session);
        foreach (var day in treatment.Days)
        {
            yield return new(Id("treatment", name, Number(session), Number(day.Place)), kind, day.Date, day.Date, session, name) { Step = day.Step, Animals = animals, Cautions = day.Step.Cautions };
        }

        if (treatment.Method is { IsForDonors: false, HeatDay: null } && !treatment.Heats.IsEmpty)
        {
            yield return new(Id("heat", name, Number(session)), EntryKind.HeatWatch, treatment.Heats[0].Date, treatment.Heats[^1].Date, session, name) { Animals = animals };
        }
    }

    /// <summary>Only days on which someone does something clash with weekends and holidays.</summary>
    private ImmutableArray<Clash> Clashes(PlanEntry entry) => entry.Kind switch
    {
        EntryKind.Collection or EntryKind.Transfer =>
        [
            .. DayRuns.From(entry.From, entry.To).SelectMany(day => Clash.On(day, aims)),
            .. calendar.VisitClashes.Where(clash => clash.Date == entry.From && clash.Visits == (entry.Kind == EntryKind.Collection ? "collection" : "transfer")),
        ],
        EntryKind.Treatment or EntryKind.DonorTreatment or EntryKind.TaskStart => [.. Clash.On(entry.From, aims)],
        _ => [],
    };

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>Names as they are compared, every other sign than a letter or a digit a hyphen.</summary>
    private static string Id(params string[] parts) =>
        string.Join('/', parts.Select(part => string.Concat(NameFolding.Fold(part).Select(c => char.IsLetterOrDigit(c) ? c : '-'))));
}
