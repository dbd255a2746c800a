namespace Byrelaw.Reporting.Tests.Invented;

/// <summary>
/// A draft with an animal for every answer, written by hand. Every word that would come from a
/// file goes through <c>alter</c>.
/// </summary>
internal sealed class InventedDraft
{
    public static readonly LocalDate Known = new(2026, 9, 20);
    private static readonly LocalDate Last = new(2027, 10, 21);
    private readonly Func<string, string> _alter;
    private readonly InventedWords _words;
    private readonly InventedRules _rules;
    private readonly InventedHerd _herd;
    private readonly List<AnimalJudgement> _animals = [];

    private InventedDraft(string list, Func<string, string> alter)
    {
        _alter = alter;
        _words = new InventedWords(alter);
        _rules = new InventedRules(_words, list, alter);
        _herd = new InventedHerd(_words, alter);
    }

    /// <summary>The draft.</summary>
    /// <param name="alter">What becomes of every word from a file; null for nothing.</param>
    /// <param name="list">The list's name.</param>
    /// <param name="broken">Whether a line of the rule files could not be read.</param>
    /// <param name="problems">Whether the records have problems.</param>
    public static Draft Make(Func<string, string>? alter = null, string list = "recipients", bool broken = false, bool problems = true) =>
        new InventedDraft(list, alter ?? (text => text)).Draft(broken, problems);

    /// <summary>One animal of a draft's only list.</summary>
    public static AnimalReport Animal(Draft draft, string number)
    {
        var list = new ListReport(draft, draft.Lists[0]);
        return new AnimalReport(list, list.List.Animals.Single(animal => animal.Number == number));
    }

    private Draft Draft(bool broken, bool problems)
    {
        Ready("1007");
        OnCourse("1012");
        Ask("1019");
        Waived("1031");
        No("1033");
        TooOldAndTooFresh("1040");
        Sold("1055");
        Later("1423");
        var rulebook = new Rulebook
        {
            Vocabulary = _words.Vocabulary,
            Defines = [_rules.Define],
            Rules = _rules.All,
            Prefers = [_rules.Prefer],
            Drops = [_rules.Dropped],
            Waivers = [_rules.Waiver],
            Programme = _rules.Programme,
        };
        var list = new ListJudgement(_rules.Choice, broken ? [new BrokenPart(_rules.List, _rules.Span("nedes at least"))] : [], [.. _animals], []);
        return new Draft(rulebook, _herd.Make(problems ? Problems() : []), null, [list]);
    }

    private void Ready(string number)
    {
        var her = Her(number, calved: new LocalDate(2026, 8, 25));
        Judged(her, number, Answer.Ready, Plain(her), new LocalDate(2026, 10, 20), new LocalDate(2026, 11, 4), rank: 1, rules:
        [
            Calved(new LocalDate(2026, 8, 25), 56, RuleAnswer.Met, shaky: true), Empty(RuleAnswer.Met), Clean(), Copper(RuleAnswer.Met), Score(), Age(5), Felt(),
        ]);
    }

    private void OnCourse(string number)
    {
        var her = Her(number, calved: new LocalDate(2026, 8, 1));
        Judged(her, number, Answer.OnCourse, Plain(her), new LocalDate(2026, 9, 26), null, rank: 2, rules:
        [
            Calved(new LocalDate(2026, 8, 1), 80, RuleAnswer.Met), Empty(RuleAnswer.Met) with { Expected = true }, Clean(), Copper(RuleAnswer.Met), Score(), Age(6), Felt(),
        ]);
    }

    private void Ask(string number)
    {
        var her = Her(number, calved: new LocalDate(2026, 7, 1));
        _herd.Event(her, _words.Mating, new LocalDate(2026, 8, 2));
        var scan = new Missing(MissingReason.NoResult, _alter("pregnancy test"), new LocalDate(2026, 8, 30), InventedRules.To, SettledBy.Yards);
        var liver = new Missing(MissingReason.TooFewOfTheMob, _alter("liver copper"), null, null, SettledBy.LaboratoryOrTime, Needed: 3);
        var pending = new Missing(MissingReason.ResultPending, _alter("liver copper"), null, null, SettledBy.LaboratoryOrTime, Line: 305);
        Judged(her, number, Answer.Ask, Steady(Truth.Unknown), null, null, settle: [scan, liver, pending], rules:
        [
            Calved(new LocalDate(2026, 7, 1), 111, RuleAnswer.Met), Empty(RuleAnswer.NotKnown, scan), Clean(), Copper(RuleAnswer.NotKnown, liver, pending), Score(), Age(4), Felt(),
        ]);
    }

    private void Waived(string number)
    {
        var her = Her(number, calved: new LocalDate(2026, 7, 10));
        Judged(her, number, Answer.Ready, Plain(her), new LocalDate(2026, 9, 20), null, rank: 3, also: true, rules:
        [
            Calved(new LocalDate(2026, 7, 10), 102, RuleAnswer.Met), Empty(RuleAnswer.Met), Clean(), Copper(RuleAnswer.Met) with { Waiver = _rules.Waiver }, Score(), Age(3), Felt(),
        ]);
    }

    private void No(string number)
    {
        var her = Her(number, calved: new LocalDate(2026, 7, 20));
        Judged(her, number, Answer.No, Steady(Truth.False), null, null, forGood: true, rules:
        [
            Calved(new LocalDate(2026, 7, 20), 92, RuleAnswer.Met), Empty(RuleAnswer.Met), Clean(), Copper(RuleAnswer.Met), Score(), Age(13), Felt(),
        ]);
    }

    private void TooOldAndTooFresh(string number)
    {
        var her = Her(number, calved: new LocalDate(2026, 9, 10));
        Judged(her, number, Answer.No, Steady(Truth.False), null, null, never: [_rules.Calved.Name, _rules.Score_.Name], rules:
        [
            Calved(new LocalDate(2026, 9, 10), 40, RuleAnswer.NotMet), Empty(RuleAnswer.Met), Clean(), Copper(RuleAnswer.Met), Thin(), Age(5), Felt(),
        ]);
    }

    private void Sold(string number)
    {
        var her = Her(number, calved: new LocalDate(2026, 7, 20));
        var gate = new RuleJudgement
        {
            Name = "In the herd",
            Rule = null,
            Gate = Gate.InTheHerd,
            Answer = RuleAnswer.NotMet,
            ForGood = true,
            Timeline = Steady(Truth.False),
            GateEvidence = [new Evidence(_words.Sale, null, new LocalDate(2026, 9, 3), null, _alter("events.csv"), 377)],
        };
        Judged(her, number, Answer.No, Steady(Truth.False), null, null, forGood: true, rules: [gate]);
    }

    private void Later(string number)
    {
        var calved = new LocalDate(2026, 9, 7);
        var her = Her(number, calved);
        _herd.Event(her, _words.Metritis, new LocalDate(2026, 9, 11));
        var timeline = Steps((Truth.False, Known, false), (Truth.True, new LocalDate(2026, 11, 2), true), (Truth.Unknown, new LocalDate(2027, 3, 1), true));
        var copper = Copper(RuleAnswer.Met);
        Judged(her, number, Answer.Later, timeline, new LocalDate(2026, 11, 2), new LocalDate(2027, 2, 28), tooLate: true, rules:
        [
            Calved(calved, 43, RuleAnswer.NotMet), Empty(RuleAnswer.Met) with { Expected = true }, Clean(), copper,
            Score() with { Timeline = Steps((Truth.True, Known, false), (Truth.Unknown, new LocalDate(2027, 3, 1), true)), ChangesOn = new LocalDate(2027, 3, 1) },
            Rule(_rules.Age, RuleAnswer.DoesNotApply), Felt(),
        ]);
    }

    private int Her(string number, LocalDate calved)
    {
        var animal = _herd.Add(number, new LocalDate(2021, 8, 10));
        _herd.Event(animal, _words.Calving, calved);
        _herd.Event(animal, _words.UterineCheck, new LocalDate(2026, 9, 18));
        return animal;
    }

    private void Judged(int animal, string number, Answer answer, Timeline timeline, LocalDate? from, LocalDate? until, ImmutableArray<RuleJudgement> rules,
        int? rank = null, bool tooLate = false, bool forGood = false, bool also = false, ImmutableArray<string>? never = null, ImmutableArray<Missing>? settle = null) =>
        _animals.Add(new AnimalJudgement
        {
            Animal = animal,
            Number = _alter(number),
            Sort = AnimalSort.Cow,
            Answer = answer,
            ReadyFrom = from,
            ReadyUntil = until,
            Rank = rank,
            Score = rank is null ? 0 : 4 - rank.Value,
            TooLate = tooLate,
            ForGood = forGood,
            NeverTogether = never ?? [],
            Settle = settle ?? [],
            AlsoReadyOn = also ? [_alter("donors")] : [],
            Rules = rules,
            Timeline = timeline,
            Prefers = [new PreferJudgement(_rules.Prefer, rank is null ? Truth.False : Truth.True, [Finding(_rules.Prefer.Condition, Truth.True, new FoundNever())])],
        });

    private RuleJudgement Calved(LocalDate date, int days, RuleAnswer answer, bool shaky = false) => Rule(_rules.Calved, answer, Finding(
        _rules.Calved.Needs, answer == RuleAnswer.Met ? Truth.True : Truth.False, new FoundSince(date, new TimeLength(days, TimeUnit.Days)), days - 56,
        [new Evidence(_words.Calving, null, date, null, _alter("events.csv"), 318)],
        remedy: answer == RuleAnswer.Met ? null : new Remedy(RemedyKind.Time, [_alter("calving")], date.PlusDays(56), new LocalDate(2026, 8, 25)))) with
    {
        IsShaky = shaky,
        TurnsOn = answer == RuleAnswer.Met ? null : date.PlusDays(56),
        ChangesOn = answer == RuleAnswer.Met ? null : date.PlusDays(56),
        Timeline = Steps((Truth.False, Known, false), (Truth.True, date.PlusDays(56), false)),
    };

    private RuleJudgement Empty(RuleAnswer answer, params Missing[] missing) => Rule(_rules.NotInCalf, answer, Finding(
        _rules.Scan, answer == RuleAnswer.Met ? Truth.True : Truth.Unknown,
        answer == RuleAnswer.Met ? new FoundAnswers([_alter("empty")], new LocalDate(2026, 9, 18)) : new FoundNothing(),
        evidence: answer == RuleAnswer.Met ? [new Evidence(_words.PregnancyTest, null, new LocalDate(2026, 9, 18), _alter("empty"), _alter("events.csv"), 331)] : [], missing: [.. missing]));

    private RuleJudgement Clean() => Rule(_rules.Uterus, RuleAnswer.Met, Finding(_rules.Uterus.Needs, Truth.True, new FoundAnswers([_alter("clean")], new LocalDate(2026, 9, 18)),
        evidence: [new Evidence(_words.UterineCheck, null, new LocalDate(2026, 9, 18), _alter("clean"), _alter("events.csv"), 332)]));

    private RuleJudgement Copper(RuleAnswer answer, params Missing[] missing) => Rule(_rules.Copper, answer, Finding(_rules.Copper.Needs,
        answer == RuleAnswer.Met ? Truth.True : Truth.Unknown, new FoundNumber(96.4, 96.4, "umol/kg", null, answer == RuleAnswer.Met ? 6 : 2), answer == RuleAnswer.Met ? 1.4 : null,
        [
            new Evidence(_words.LiverCopper, null, new LocalDate(2026, 8, 14), _alter("91 umol/kg"), _alter("events.csv"), 290),
            new Evidence(_words.LiverCopper, null, new LocalDate(2026, 8, 31), _alter("102 umol/kg"), _alter("events.csv"), 305),
        ], missing: [.. missing]));

    private RuleJudgement Score() => Rule(_rules.Score_, RuleAnswer.Met, Finding(_rules.Score_.Needs, Truth.True,
        new FoundNumber(4.8, 4.8, null, new LocalDate(2026, 9, 18), 1), 0.3, [new Evidence(_words.BodyCondition, null, new LocalDate(2026, 9, 18), "4.8", _alter("events.csv"), 333)])) with
    { ChangesOn = new LocalDate(2026, 11, 4) };

    private RuleJudgement Thin() => Rule(_rules.Score_, RuleAnswer.NotMet, Finding(_rules.Score_.Needs, Truth.False,
        new FoundNumber(4.1, 4.1, null, new LocalDate(2026, 9, 18), 1), -0.4, [new Evidence(_words.BodyCondition, null, new LocalDate(2026, 9, 18), "4.1", _alter("events.csv"), 333)],
        remedy: new Remedy(RemedyKind.NewResult, [_alter("body condition")])));

    private RuleJudgement Age(int years) => Rule(_rules.Age, years <= 12 ? RuleAnswer.Met : RuleAnswer.NotMet, Finding(_rules.Age.Needs, years <= 12 ? Truth.True : Truth.False,
        new FoundAge(new TimeLength(years, TimeUnit.Years), new TimeLength(years, TimeUnit.Years)), 12 - years,
        [new Evidence(null, "born", null, "2013-08-01", _alter("animals.csv"), 34)], remedy: years <= 12 ? null : new Remedy(RemedyKind.ForGood, [])));

    private RuleJudgement Felt() => Rule(_rules.Felt, RuleAnswer.NotKnown, Finding(_rules.Felt.Needs, Truth.Unknown, new FoundNothing()));

    private static RuleJudgement Rule(Rule rule, RuleAnswer answer, params Finding[] findings) => new()
    {
        Name = rule.Name,
        Rule = rule,
        Answer = answer,
        Findings = [.. findings],
        Timeline = Steady(answer switch { RuleAnswer.NotMet => Truth.False, RuleAnswer.NotKnown => Truth.Unknown, _ => Truth.True }),
    };

    private static Finding Finding(Language.Rulebooks.Conditions.Condition condition, Truth truth, Found found, double? margin = null,
        ImmutableArray<Evidence>? evidence = null, ImmutableArray<Missing>? missing = null, Remedy? remedy = null) => new()
        {
            Condition = condition,
            Truth = truth,
            Found = found,
            Margin = margin,
            Decides = true,
            Evidence = evidence ?? [],
            Missing = missing ?? [],
            Remedy = remedy,
        };

    private static Timeline Plain(int her) => Steps((Truth.False, Known, false), (Truth.True, new LocalDate(2026, 10, 1).PlusDays(her), false), (Truth.Unknown, new LocalDate(2027, 1, 10), true));

    private static Timeline Steady(Truth truth) => Steps((truth, Known, false));

    private static Timeline Steps(params (Truth Truth, LocalDate From, bool Expected)[] steps) =>
        new([.. steps.Select(step => new Stretch(step.From, step.Truth, step.Expected))], Last);

    private ImmutableArray<Diagnostic> Problems() =>
    [
        new("R0103", Severity.Error, _alter("events.csv"), 214, 6, 4, _alter("`107?` is no animal's number"), _alter("a number of animals.csv"), _alter("did you mean 1077?"), _alter("2026-09-03,107?,heat")),
        new("R0301", Severity.Warning, _alter("events.csv"), 377, 1, 10, _alter("two calvings within 60 days"), null, null, _alter("2026-09-03,1055,sale")),
    ];
}
