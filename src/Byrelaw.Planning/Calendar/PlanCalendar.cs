using System.Globalization;
using Byrelaw.Planning.LeadTimes;

namespace Byrelaw.Planning.Calendar;

/// <summary>All days of a programme.</summary>
/// <param name="Rounds">Each collection and its transfers.</param>
/// <param name="Treatments">Every method that may be used, for every round.</param>
/// <param name="Donors">The donors' calendar for every flush; empty for others.</param>
/// <param name="Tasks">What must be done by when.</param>
/// <param name="CleanTimes">Times in which nothing may happen.</param>
/// <param name="Season">How the rounds stand to the season.</param>
/// <param name="VisitClashes">Days on which no team comes.</param>
/// <param name="Entries">All of it as entries, in order.</param>
public sealed record PlanCalendar(
    ImmutableArray<Round> Rounds, ImmutableArray<TreatmentCalendar> Treatments, ImmutableArray<TreatmentCalendar> Donors,
    ImmutableArray<TaskDates> Tasks, ImmutableArray<CleanTime> CleanTimes, Season Season, ImmutableArray<Clash> VisitClashes, ImmutableArray<PlanEntry> Entries)
{
    /// <summary>Draws it up.</summary>
    /// <param name="rulebook">With a programme, read without errors.</param>
    /// <param name="lists">The programme's lists, judged.</param>
    /// <param name="today">The day of planning.</param>
    /// <param name="sessions">The sessions with those who are named; none where nobody asks who they are.</param>
    public static PlanCalendar Of(Rulebook rulebook, ImmutableArray<ListJudgement> lists, LocalDate today, params ImmutableArray<NamedSession> sessions)
    {
        ArgumentNullException.ThrowIfNull(rulebook);
        var (programme, plans) = (rulebook.Programme!, rulebook.Plans);
        var rounds = Round.Of(programme);
        var methods = programme.Aims.MethodsOf(plans);
        ImmutableArray<TreatmentCalendar> treatments = [.. rounds.SelectMany(round => methods.Select(method => TreatmentCalendar.Of(method, round)))];
        ImmutableArray<TreatmentCalendar> donors = programme.Aims is { Embryos: EmbryoOrigin.Flushed, DonorMethod: { } name } && plans.Method(name) is { } method
            ? [.. rounds.Select(round => TreatmentCalendar.ForDonors(method, round))] : [];
        var calendar = new PlanCalendar(
            rounds, treatments, donors, TaskDates.Of(plans, programme, lists, today, sessions), CleanTime.Of(rulebook), Season.Of(plans, programme, rounds),
            [.. Clash.WithVisits(plans, rounds)], []);
        return calendar with
        {
            Entries =
            [
                .. calendar.All().Select(entry => entry with { Clashes = Clashes(entry, programme.Aims, calendar.VisitClashes) })
                    .OrderBy(entry => entry.From).ThenBy(entry => entry.Kind).ThenBy(entry => entry.Id, StringComparer.Ordinal),
            ],
        };
    }

    private IEnumerable<PlanEntry> All() =>
    [
        .. Tasks.Where(task => !task.IsDone).Select(task => new PlanEntry(
            task.Session > 1 ? Id("task", task.Task.Name, Number(task.Session)) : Id("task", task.Task.Name), EntryKind.TaskStart, task.LastStart, task.LastStart,
            task.IsOfASession ? task.Session : null, task.Task.Name) { Task = task, Cautions = task.Task.Cautions }),
        .. CleanTimes.Select(time => new PlanEntry(Id("clean", time.Rule), EntryKind.CleanTime, time.From, time.To, null, time.Rule)),
        .. Treatments.SelectMany(treatment => Of(treatment, EntryKind.Treatment)),
        .. Donors.SelectMany(treatment => Of(treatment, EntryKind.DonorTreatment)),
        .. Rounds.SelectMany(Of),
        .. Season.PlannedStartOfMating is { } start ? [new PlanEntry("start-of-mating", EntryKind.StartOfMating, start, start, null, null)] : (PlanEntry[])[],
        .. Season.Rounds.Where(round => round.InCows is not null).Select(round => new PlanEntry(
            Id("calving", Number(round.Round.Number)), EntryKind.Calving, round.InCows!.From, round.InCows.To, round.Round.Number, null)),
    ];

    private static IEnumerable<PlanEntry> Of(Round round) =>
    [
        .. round.Collection is { } day ? [new PlanEntry(Id("collection", Number(round.Number)), EntryKind.Collection, day, day, round.Number, null)] : (PlanEntry[])[],
        new PlanEntry(Id("transfer", Number(round.Number)), EntryKind.Transfer, round.FirstTransfer, round.FinalTransfer, round.Number, null),
    ];

    private static IEnumerable<PlanEntry> Of(TreatmentCalendar treatment, EntryKind kind)
    {
        var (name, round) = (treatment.Method.Name, treatment.Round);
        foreach (var day in treatment.Days)
        {
            yield return new(Id("treatment", name, Number(round), Number(day.Place)), kind, day.Date, day.Date, round, name) { Step = day.Step, Cautions = day.Step.Cautions };
        }

        if (treatment.Method is { IsForDonors: false, HeatDay: null } && !treatment.Heats.IsEmpty)
        {
            yield return new(Id("heat", name, Number(round)), EntryKind.HeatWatch, treatment.Heats[0].Date, treatment.Heats[^1].Date, round, name);
        }
    }

    /// <summary>Only days on which someone does something clash with weekends and holidays.</summary>
    private static ImmutableArray<Clash> Clashes(PlanEntry entry, Aims aims, ImmutableArray<Clash> visits) => entry.Kind switch
    {
        EntryKind.Collection or EntryKind.Transfer =>
        [
            .. DayRuns.From(entry.From, entry.To).SelectMany(day => Clash.On(day, aims)),
            .. visits.Where(clash => clash.Date == entry.From && clash.Visits == (entry.Kind == EntryKind.Collection ? "collection" : "transfer")),
        ],
        EntryKind.Treatment or EntryKind.DonorTreatment or EntryKind.TaskStart => [.. Clash.On(entry.From, aims)],
        _ => [],
    };

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>Names as they are compared, every other sign than a letter or a digit a hyphen.</summary>
    private static string Id(params string[] parts) =>
        string.Join('/', parts.Select(part => string.Concat(NameFolding.Fold(part).Select(c => char.IsLetterOrDigit(c) ? c : '-'))));
}
