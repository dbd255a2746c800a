namespace Byrelaw.Reporting.Tests.Invented;

/// <summary>A few rules of each sort: plain, safety, changed, local, dropped, waived, on the day, for heifers only.</summary>
internal sealed class InventedRules
{
    public static readonly LocalDate From = new(2026, 10, 20);
    public static readonly LocalDate To = new(2026, 10, 21);
    private readonly Func<string, string> _alter;
    private readonly Agreement _agreed;

    public InventedRules(InventedWords words, string list, Func<string, string> alter)
    {
        _alter = alter;
        List = alter(list);
        _agreed = new Agreement([alter("herd vet"), alter("farmer")], new LocalDate(2026, 6, 14));
        var empty = new ListCondition(ListKind.AnyOf, 0,
        [
            Condition("no mating or transfer since last calving", span => new CountCondition(
                new CountTest(Comparison.Exactly, 0, 0), [new Counted(words.Mating), new Counted(words.Transfer)], [new SinceLast([words.Calving]) { Span = span }]) { Span = span }),
            Scan = Condition("latest pregnancy test from 28 days after last mating is empty", span => new TestCondition(
                words.PregnancyTest, [new FromAfterLast(new TimeLength(28, TimeUnit.Days), [words.Mating]) { Span = span }], [1], false) { Span = span }),
        ])
        { Span = Span("any of: no mating or transfer since last calving; latest pregnancy test from 28 days after last mating is empty") };
        Define = new Define(alter("empty"), empty, false, empty.Span);
        Calved = Rule("Eight weeks calved", Since(words, 56)) with { Audience = Audience.Cows };
        NotInCalf = Rule("Not in calf", Condition("empty", span => new NamedCondition(alter("empty"), 0, false) { Span = span })) with
        {
            IsSafety = true,
            Because = alter("Prostaglandin and the passing of a pipette end a pregnancy."),
        };
        var uterus = Condition("latest uterine check from 21 days after last calving is clean", span => new TestCondition(
            words.UterineCheck, [new FromAfterLast(new TimeLength(21, TimeUnit.Days), [words.Calving]) { Span = span }], [0], false)
        { Span = span });
        Uterus = Rule("Uterus clean", uterus);
        Copper = Rule("Copper of the mob", Condition("average liver copper of her mob in the last 90 days, from at least 5 animals, at least 95 umol/kg",
            span => new MobMeasuredCondition(Aggregate.Average, words.LiverCopper, [new InTheLast(new TimeLength(90, TimeUnit.Days)) { Span = span }], 5,
                new NumberTest(Comparison.AtLeast, new Limit(95), new Limit(95)))
            { Span = span }));
        var before = Rule("Body condition", Score(words, 4.0, 5.5));
        Score_ = before with
        {
            Needs = Score(words, 4.5, 5.5),
            Before = before,
            Basis = Basis.Changed,
            Agreement = _agreed,
            Because = alter("Thin cows lost their calves last year."),
        };
        Age = Rule("Young enough", Condition("age at most 12 years", span => new AgeCondition(new TimeTest(Comparison.AtMost, new TimeLength(12, TimeUnit.Years), new TimeLength(12, TimeUnit.Years))) { Span = span })) with
        {
            Basis = Basis.Local,
            Agreement = _agreed,
        };
        Felt = Rule("Corpus luteum felt", uterus) with { OnTheDay = true };
        Prefer = new Prefer { Name = alter("Settled in milk"), List = List, Condition = Since(words, 60), Counts = 2, Because = alter("Past the hard weeks."), Span = Span("prefer") };
        Dropped = new Drop(Rule("Weighed", Score(words, 1, 10)), alter("No scales on this farm."), _agreed, Span("drop"));
        Waiver = new Waiver(alter("Copper of the mob"), alter("1031"), new LocalDate(2026, 10, 31), alter("Bolus given on 2 September; retest booked."), _agreed, Span("waive"));
    }

    public string List { get; }
    public Define Define { get; }
    public Condition Scan { get; }
    public Rule Calved { get; }
    public Rule NotInCalf { get; }
    public Rule Uterus { get; }
    public Rule Copper { get; }
    public Rule Score_ { get; }
    public Rule Age { get; }
    public Rule Felt { get; }
    public Prefer Prefer { get; }
    public Drop Dropped { get; }
    public Waiver Waiver { get; }
    public ImmutableArray<Rule> All => [Calved, NotInCalf, Uterus, Copper, Score_, Age, Felt];

    public Choice Choice => new(List, ChoiceFrom.Females, [], null, From, To, Span("choose"));

    public Programme Programme => new(_alter("Withy Bend, spring 2026"),
        [new ProgrammeDate("collection", new LocalDate(2026, 10, 12), Span("collection")), new ProgrammeDate("final transfer", To, Span("transfer"))], [Choice], Span("programme"));

    public SourceSpan Span(string text)
    {
        var file = new SourceFile(_alter("rules.byre"), "# a file\n\n" + _alter(text));
        return new SourceSpan(file, 10, file.Text.Length - 10);
    }

    private Condition Since(InventedWords words, int days) => Condition($"at least {days} days since last calving", span =>
        new TimeSinceCondition(new TimeTest(Comparison.AtLeast, new TimeLength(days, TimeUnit.Days), new TimeLength(days, TimeUnit.Days)), [words.Calving]) { Span = span });

    private Condition Score(InventedWords words, double from, double to) => Condition(
        FormattableString.Invariant($"latest body condition in the last 45 days between {from} and {to}"), span =>
        new MeasuredCondition(Aggregate.Latest, words.BodyCondition, [new InTheLast(new TimeLength(45, TimeUnit.Days)) { Span = span }],
            new NumberTest(Comparison.Between, new Limit(from), new Limit(to)))
        { Span = span });

    private Condition Condition(string text, Func<SourceSpan, Condition> make) => make(Span(text));

    private Rule Rule(string name, Condition needs) => new()
    {
        Name = _alter(name),
        List = List,
        Needs = needs,
        Because = _alter($"The reason for {name}."),
        Source = _alter("common practice"),
        Span = Span(name),
    };
}
