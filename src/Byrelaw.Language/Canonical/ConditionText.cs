namespace Byrelaw.Language.Canonical;

/// <summary>Conditions the one way.</summary>
/// <param name="Name">How a name is written inside a line.</param>
/// <param name="First">How a name is written that the condition starts with.</param>
/// <param name="Plurals">Whether several of a kind are called by their plural, where one is declared.</param>
/// <param name="Doubts">Whether to say too what is not known of it for the file that it stands in: no line says that.</param>
internal sealed record ConditionText(Func<string, string> Name, Func<string, string> First, bool Plurals, bool Doubts = false)
{
    /// <summary>For pages: names as declared.</summary>
    public static readonly ConditionText Spoken = new(name => name, name => name, Plurals: true);

    /// <summary>For files: names so that they read back.</summary>
    public static readonly ConditionText Exact = new(NameText.Exact, NameText.ExactAtStart, Plurals: false);

    /// <summary>All that it means: the same for conditions that answer alike.</summary>
    public static readonly ConditionText Meaning = Exact with { Doubts = true };

    /// <summary>A condition on one line.</summary>
    public string Of(Condition condition) => condition switch
    {
        CountCondition count => $"{How(count.Test)} {Counted(count)}{Windows(count.Windows)}",
        ApartCondition apart => $"at least {NumberText.Of(apart.Days)} {Counted(apart)} {DemandText.Of(apart.Apart)} apart{Windows(apart.Windows)}",
        TimeSinceCondition { IsDayOf: true } since => $"at least day {NumberText.Of(since.Test.Low.Count)} of last {WindowText.Kinds(since.Kinds, Name)}",
        TimeSinceCondition since => $"{DemandText.Of(since.Test)} since last {WindowText.Kinds(since.Kinds, Name)}",
        AgeCondition age => $"age {DemandText.Of(age.Test)}",
        ParityCondition parity => $"parity {DemandText.Of(parity.Test)}",
        FactNumberCondition fact => $"{First(fact.Fact.Name)} {DemandText.Of(fact.Test, fact.Fact.Unit, Name)}",
        FactTextCondition fact => $"{First(fact.Fact.Name)} {Is(fact.IsNot, [.. fact.Values])}{(Doubts && !fact.Doubted.IsEmpty ? $" (not known where it {Is(false, [.. fact.Doubted])})" : "")}",
        FactDateCondition fact => $"{First(fact.Fact.Name)} is {(fact.IsNot ? "not " : "")}{NumberText.Of(fact.Date)}",
        RecordedCondition fact => $"{First(fact.Fact.Name)} is {(fact.IsNot ? "not " : "")}recorded",
        MeasuredCondition { Aggregate: Aggregate.Change } change when LostOrGained.Of(change.Test.Comparison, change.Test.Low.Value) is { } said =>
            $"{said.Word} {DemandText.Of(Saying(change.Test, said.Comparison, said.Limit), change.Measure.Unit, Name)} {KindText.Of(change.Measure, Name)}{Windows(change.Windows)}",
        MeasuredCondition measured =>
            $"{measured.Aggregate.Words()} {KindText.Of(measured.Measure, Name)}{Windows(measured.Windows)} {DemandText.Of(measured.Test, measured.Measure.Unit, Name)}",
        TestCondition test =>
            $"latest {KindText.Of(test.Test, Name)}{Windows(test.Windows)} {Is(test.IsNot, [.. test.Answers.Select(answer => test.Test.Answers[answer])])}",
        SeriesCondition { Of: MeasureKind measure, Test: { } test } series =>
            $"{series.How.Words()} {KindText.Of(measure, Name)}{series.OfTheLast}{Windows(series.Windows)} {DemandText.Of(test, measure.Unit, Name)}",
        SeriesCondition { Of: TestKind test } series =>
            $"{series.How.Words()} {KindText.Of(test, Name)}{series.OfTheLast}{Windows(series.Windows)} {Is(series.IsNot, [.. series.Answers.Select(answer => test.Answers[answer])])}",
        MobMeasuredCondition mob =>
            $"{mob.Aggregate.Words()} {KindText.Of(mob.Measure, Name)} of her mob{Windows(mob.Windows)}, {From(mob.FromAtLeast)}, {DemandText.Of(mob.Test, mob.Measure.Unit, Name)}",
        MobCountCondition mob =>
            $"{DemandText.Of(mob.Count)} of her mob with {KindText.Of(mob.Measure, Name)}{Windows(mob.Windows)} {DemandText.Of(mob.Test, mob.Measure.Unit, Name)}, {From(mob.FromAtLeast)}",
        SpellCondition spell => $"{(spell.Not ? "not " : "")}{First(spell.Spell.Name)}{Windows(spell.Windows)}",
        InMobCondition mob => $"{(mob.IsNot ? "not " : "")}in mob {string.Join(" or ", mob.Mobs.Select(Name))}",
        StandingCondition standing =>
            $"{First(standing.Fact.Name)} {(standing.Not ? "not " : "")}in the top {NumberText.Of(standing.Percent)}% of {Of(standing)}",
        NamedCondition named => $"{(named.Not ? "not " : "")}{First(Plurals ? FloorText.Spoken(named.Define) : named.Define)}",
        ListCondition list when Plurals => SpokenList.Of(list, Of),
        ListCondition list => $"{Head(list)}: {string.Join("; ", list.Items.Select(item => item is ListCondition ? $"({Of(item)})" : Of(item)))}",
        BrokenCondition => "(could not be read)",
        _ => throw MissingKind.Of(condition, nameof(ConditionText)),
    };

    private static NumberTest Saying(NumberTest test, Comparison comparison, double limit)
    {
        var said = test.Low with { Value = limit };
        return new NumberTest(comparison, said, said);
    }

    /// <summary><c>with method natural</c>.</summary>
    public string Of(KindFilter filter) => KindText.Of(filter, Name);

    /// <summary><c>any of</c>, <c>at least 2 of</c>.</summary>
    public static string Head(ListCondition list) => list.Kind switch
    {
        ListKind.AnyOf => "any of",
        ListKind.AllOf => "all of",
        ListKind.NoneOf => "none of",
        _ => $"at least {NumberText.Of(list.Count)} of",
    };

    private static CountCondition Counting(ApartCondition apart) => new(new CountTest(Comparison.AtLeast, apart.Days, apart.Days), apart.Counted, apart.Windows) { Span = apart.Span };

    /// <summary><c>heats or matings</c>.</summary>
    public string Counted(ApartCondition apart) => Counted(Counting(apart));

    /// <summary><c>mastitis or metritis</c>.</summary>
    public string Counted(CountCondition count) => string.Join(" or ", count.Counted.Select(counted => Of(counted, count.Test)));

    private string Windows(System.Collections.Immutable.ImmutableArray<Window> windows) => WindowText.Of(windows, Name);

    /// <summary><c>no</c>, <c>at most 2</c>.</summary>
    public static string How(CountTest test) => test.IsNone ? "no" : DemandText.Of(test);

    /// <summary>An event, or an answer and its test; where one of the two needs quotes they share them.</summary>
    private string Of(Counted counted, CountTest test)
    {
        var name = Plurals && test.High > 1 ? PluralName.Of(counted.Kind.Declaration) : counted.Kind.Declaration.Name;
        if (counted.Kind is not TestKind found || counted.Answer < 0)
        {
            return KindText.Of(counted.Kind, Name, Name(name));
        }

        var answer = found.Answers[counted.Answer];
        return KindText.Of(counted.Kind, Name, Name(answer) == answer && Name(name) == name ? $"{answer} {name}" : Name($"{answer} {name}"));
    }

    /// <summary><c>is clean</c>, <c>is not one of a, b</c>.</summary>
    public string Is(bool not, IReadOnlyList<string> values) =>
        $"is {(not ? "not " : "")}{(values.Count == 1 ? "" : "one of ")}{string.Join(", ", values.Select(Name))}";

    /// <summary><c>from at least 5 animals</c>.</summary>
    public static string From(int animals) => $"from at least {NumberText.Of(animals)} {(animals == 1 ? "animal" : "animals")}";

    /// <summary><c>the herd</c>, <c>cows with a value</c>.</summary>
    public static string Of(StandingCondition standing)
    {
        ArgumentNullException.ThrowIfNull(standing);
        return Of(standing.Group) + (standing.WithValue ? " with a value" : "");
    }

    private static string Of(HerdGroup group) => group switch
    {
        HerdGroup.Cows => "cows",
        HerdGroup.Heifers => "heifers",
        _ => "the herd",
    };
}
