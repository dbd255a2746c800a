namespace Byrelaw.Workshop.Comparing.Mixing;

/// <summary>Says a condition of one rulebook in the words, defines and dates of a mixed one. What cannot be said there is broken.</summary>
internal sealed class Rewording(MixedWords words, MixedDefines defines, Programme? programme)
{
    public Condition Of(Condition condition) => Said(condition) ?? new BrokenCondition { Span = condition.Span };

    private Condition? Said(Condition condition) => condition switch
    {
        CountCondition count => All(count.Counted, Of) is { } counted && Windows(count.Windows) is { } windows ? count with { Counted = counted, Windows = windows } : null,
        TimeSinceCondition since => since with { Kinds = Kinds(since.Kinds) },
        FactNumberCondition fact => Test(fact.Test, fact.Fact.Unit, words.Find(fact.Fact).Unit, null) is { } test ? fact with { Fact = words.Find(fact.Fact), Test = test } : null,
        FactTextCondition fact => fact with { Fact = words.Find(fact.Fact) },
        FactDateCondition fact => fact with { Fact = words.Find(fact.Fact) },
        RecordedCondition fact => fact with { Fact = words.Find(fact.Fact) },
        MeasuredCondition measured => Measure(measured.Measure) is { } measure && Test(measured.Test, measured.Measure, measure) is { } test
            ? measured with { Measure = measure, Test = test, Windows = Windows(measured.Windows) } : null,
        MobMeasuredCondition mob => Measure(mob.Measure) is { } measure && Test(mob.Test, mob.Measure, measure) is { } test
            ? mob with { Measure = measure, Test = test, Windows = Windows(mob.Windows) } : null,
        MobCountCondition mob => Measure(mob.Measure) is { } measure && Test(mob.Test, mob.Measure, measure) is { } test
            ? mob with { Measure = measure, Test = test, Windows = Windows(mob.Windows) } : null,
        TestCondition test => words.Find(test.Test) is TestKind found && All(test.Answers, answer => Answer(test.Test, answer, found)) is { } answers
            ? test with { Test = found, Answers = answers, Windows = Windows(test.Windows) } : null,
        SpellCondition spell => words.Find(spell.Spell) is { } found ? spell with { Spell = found, Windows = Windows(spell.Windows) } : null,
        StandingCondition standing => standing with { Fact = words.Find(standing.Fact) },
        NamedCondition named => defines.Find(named.Define) is var (index, name) ? named with { Define = name, Index = index } : null,
        ListCondition list => list with { Items = [.. list.Items.Select(Of)] },
        _ => condition,
    };

    private ImmutableArray<Window> Windows(ImmutableArray<Window> windows) => [.. windows.Select(window => window switch
    {
        SinceLast since => since with { Kinds = Kinds(since.Kinds) },
        FromAfterLast after => after with { Kinds = Kinds(after.Kinds) },
        BeforeDate before => before with { Date = Date(before.Date) },
        SinceDate since => since with { Date = Date(since.Date) },
        _ => window,
    })];

    /// <summary>A date of the programme is the mixed programme's.</summary>
    private DateReference Date(DateReference date) => date.Name is { } name ? date with { Value = programme?.Date(name) } : date;

    private ImmutableArray<Kind> Kinds(ImmutableArray<Kind> kinds) => [.. kinds.Select(words.Find)];

    private Counted? Of(Counted counted)
    {
        var found = words.Find(counted.Kind);
        if (counted.Kind is not TestKind test || counted.Answer < 0)
        {
            return found is TestKind ? null : counted with { Kind = found };
        }

        return found is TestKind other && Answer(test, counted.Answer, other) is { } answer ? new Counted(other, answer) : null;
    }

    private static int? Answer(TestKind test, int answer, TestKind found)
    {
        var at = found.Answers.Select(NameFolding.Fold).ToList().IndexOf(NameFolding.Fold(test.Answers[answer]));
        return at < 0 ? null : at;
    }

    private MeasureKind? Measure(MeasureKind measure) => words.Find(measure) is MeasureKind found && found.Scale == measure.Scale ? found : null;

    private NumberTest? Test(NumberTest test, MeasureKind said, MeasureKind found) => Test(test, said.Unit, found.Unit, found.MolarMass);

    private NumberTest? Test(NumberTest test, Unit? said, Unit? wanted, double? molarMass) =>
        Limit(test.Low, said, wanted, molarMass) is { } low && Limit(test.High, said, wanted, molarMass) is { } high ? test with { Low = low, High = high } : null;

    private Limit? Limit(Limit limit, Unit? said, Unit? wanted, double? molarMass)
    {
        if (limit.PercentOf is { } fact)
        {
            return limit with { PercentOf = words.Find(fact) };
        }

        double? value = said is null && wanted is null ? limit.Value : said is null || wanted is null ? null : UnitConversion.Convert(limit.Value, said, wanted, molarMass);
        return value is { } number ? limit with { Value = number } : null;
    }

    /// <summary>All of them, or none where one cannot be said.</summary>
    private static ImmutableArray<T>? All<T>(ImmutableArray<T> items, Func<T, T?> say) where T : class
    {
        var said = items.Select(say).ToList();
        return said.Contains(null) ? null : [.. said.OfType<T>()];
    }

    private static ImmutableArray<int>? All(ImmutableArray<int> items, Func<int, int?> say)
    {
        var said = items.Select(say).ToList();
        return said.Contains(null) ? null : [.. said.OfType<int>()];
    }
}
