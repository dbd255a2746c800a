using Byrelaw.Judging.Lists;
using Byrelaw.Judging.Supposing;
using Byrelaw.Records.Reading;

namespace Byrelaw.Planning.Sessions;

/// <summary>
/// Judges a programme's sessions one after the other, each on its own days, its donors as planned: as if those who may be used had been collected in the sessions
/// before. Once a day is past only the book counts: a collection that is not on record then was none.
/// </summary>
internal sealed class SessionsInTurn(Rulebook rulebook, Herd herd, LocalDate? knownOn, LocalDate today)
{
    private readonly EventKind? _collected = CollectedBy(rulebook);
    private readonly List<SupposedRow> _planned = [];

    /// <summary>The rules with the programme on a session's days.</summary>
    public static Rulebook RulesOf(Rulebook rulebook, Session session) => session.Number == 1 ? rulebook : rulebook with { Programme = session.Programme };

    /// <summary>The next session.</summary>
    /// <param name="session">Its days.</param>
    /// <param name="byTheBook">Its lists, where they have been judged already.</param>
    /// <param name="progress">Told how many animals are done, of how many.</param>
    public JudgedSession Judge(Session session, ImmutableArray<ListJudgement>? byTheBook = null, IProgress<(int Done, int Of)>? progress = null)
    {
        var rules = RulesOf(rulebook, session);
        var judge = new Judge(rules, herd, knownOn);
        var lists = byTheBook ?? judge.JudgeAll(progress: progress).Lists;
        if (ProgrammeLists.Judged(lists, ProgrammeLists.Donors(session.Programme)) is { } donors && AsPlanned(donors, rules) is var planned && planned != donors)
        {
            lists = OnSeveralLists.Mark(lists.Replace(donors, planned));
        }

        return Collect(session, rules, judge, lists);
    }

    /// <summary>A session before the one that is asked for: only its donors matter, for they are collected in it.</summary>
    public void Pass(Session session)
    {
        if (ProgrammeLists.Donors(session.Programme) is { } choice && _collected is not null)
        {
            var rules = RulesOf(rulebook, session);
            var judge = new Judge(rules, herd, knownOn);
            Collect(session, rules, judge, [AsPlanned(judge.JudgeList(choice), rules)]);
        }
    }

    /// <summary>One animal on every list that may take her, in the next session.</summary>
    public Draft JudgeHer(int animal, Session session)
    {
        var rules = RulesOf(rulebook, session);
        var judge = new Judge(rules, herd, knownOn);
        var draft = judge.JudgeHer(animal);
        if (ProgrammeLists.Judged(draft.Lists, ProgrammeLists.Donors(session.Programme)) is { } donors)
        {
            if (Supposing(rules) is { } planned)
            {
                var hers = planned.Judge(Supposition()).JudgeOne(donors.Choice, animal);
                draft = draft with { Lists = draft.Lists.Replace(donors, donors with { Animals = [hers], Planned = [.. _planned], AsPlanned = planned.Herd(Supposition()) }) };
            }

            Collect(session, rules, judge, draft.Lists);
        }

        return draft with { Lists = [.. draft.Lists.Select(list => list with { Session = session.Number })] };
    }

    private ListJudgement AsPlanned(ListJudgement donors, Rulebook rules)
    {
        if (Supposing(rules) is not { } planned)
        {
            return donors;
        }

        var asPlanned = planned.Herd(Supposition());
        return new Judge(rules, asPlanned, knownOn).JudgeList(donors.Choice) with { Session = donors.Session, Planned = [.. _planned], AsPlanned = asPlanned };
    }

    private SupposedFarm? Supposing(Rulebook rules) => _planned.Count > 0 ? SupposedFarm.Of(rules, herd, knownOn) : null;

    private Supposition Supposition() => new() { Records = new Supposed { Rows = [.. _planned] } };

    /// <summary>Who is collected in a session counts as collected for those after it.</summary>
    private JudgedSession Collect(Session session, Rulebook rules, Judge judge, ImmutableArray<ListJudgement> lists)
    {
        var donors = ProgrammeLists.Judged(lists, ProgrammeLists.Donors(session.Programme));
        var safety = new SafetyOnDay(rules, donors?.AsPlanned ?? herd, knownOn);
        ImmutableArray<LocalDate> treated = [.. TreatmentCalendar.OfDonors(rules.Plans, session)?.Days.Select(day => day.Date).Where(day => day >= today).Distinct() ?? []];
        ImmutableArray<AnimalJudgement> collected =
        [
            .. (donors?.Animals ?? []).Where(donor => donor.Answer.MayBeUsed() && treated.All(day => safety.Holds(donors!.Choice, donor.Animal, day))),
        ];
        if (_collected is { } kind && session.Collection is { } day && day >= today && rules.Plans.Stopped.All(stopped => stopped.Session != session.Number))
        {
            _planned.AddRange(collected.Select(donor => new SupposedRow(day, donor.Number, kind.Name)));
        }

        return new(session, rules, judge, lists) { Collected = collected, Safety = donors?.AsPlanned is null ? safety : new(rules, herd, knownOn), DonorSafety = safety };
    }

    /// <summary>The event by which the programme's donors are collected: of several that mark a collection, a flush is the one that is named for it. Null where no event marks one.</summary>
    private static EventKind? CollectedBy(Rulebook rulebook)
    {
        EventKind[] all = [.. rulebook.Vocabulary.Kinds.OfType<EventKind>().Where(kind => kind.Marks == Marks.Collection)];
        var flushed = rulebook.Programme!.Aims.Embryos == EmbryoOrigin.Flushed;
        return Array.Find(all, kind => NameFolding.Fold(kind.Name).Contains("flush", StringComparison.Ordinal) == flushed) ?? all.FirstOrDefault();
    }
}
