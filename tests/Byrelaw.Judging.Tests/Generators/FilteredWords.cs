namespace Byrelaw.Judging.Tests.Generators;

/// <summary>The same words, with kinds that have a filter beside them.</summary>
public static class FilteredWords
{
    /// <summary>Columns of details. One name may be a detail of several kinds, and mean something else of each.</summary>
    public static readonly ImmutableArray<string> Columns = ["method", "sire", "cause", "step"];

    private static readonly ImmutableArray<KindFilter> Filters =
    [
        Is(Words.Mating, "method", false, "natural"),
        Is(Words.Mating, "method", true, "natural"),
        Is(Words.Mating, "method", false, "natural", "inseminated"),
        Is(Words.Mating, "sire", true, "Bull A"),
        new(Words.Mating, [Test(Words.Mating, "method", false, "inseminated"), new DetailRecorded(Words.Mating.Details[1], 1)]),
        new(Words.Mating, [new DetailRecorded(Words.Mating.Details[0], 0)]),
        Is(Words.Heat, "cause", false, "own"),
        Is(Words.Heat, "cause", true, "own"),
        Step(Words.Mastitis, Comparison.AtLeast, 2, 2, false),
        Step(Words.Calving, Comparison.Between, 1, 2, true),
        Is(Words.Virus, "method", false, "ear"),
        Is(Words.Virus, "method", true, "blood"),
        Is(Words.Copper, "sire", false, "north"),
        Step(Words.Weight, Comparison.LessThan, 3, 3, false),
    ];

    /// <summary>With all of them.</summary>
    public static readonly Vocabulary Vocabulary = new(
        [.. Words.Vocabulary.Kinds, .. Filters.Select((filter, place) => filter.AsKind(Words.Vocabulary.Kinds.Length + place))],
        Words.Vocabulary.Facts, Words.Vocabulary.Spells);

    /// <summary>A condition in which kinds are, now and then, asked with a filter.</summary>
    /// <param name="condition">Of plain kinds.</param>
    /// <param name="seed">Which filters.</param>
    public static Condition In(Condition condition, int seed)
    {
        var places = new Random(seed);
        return condition switch
        {
            CountCondition count => count with { Counted = [.. count.Counted.Select(one => one with { Kind = Of(one.Kind) })], Windows = Within(count.Windows) },
            TimeSinceCondition since => since with { Kinds = Each(since.Kinds) },
            TestCondition test => test with { Test = Of(test.Test), Windows = Within(test.Windows) },
            MeasuredCondition measured => measured with { Measure = Of(measured.Measure), Windows = Within(measured.Windows) },
            MobMeasuredCondition mob => mob with { Measure = Of(mob.Measure), Windows = Within(mob.Windows) },
            MobCountCondition mob => mob with { Measure = Of(mob.Measure), Windows = Within(mob.Windows) },
            SpellCondition spell => spell with { Windows = Within(spell.Windows) },
            _ => condition,
        };

        ImmutableArray<Window> Within(ImmutableArray<Window> windows) => [.. windows.Select(window => window switch
        {
            SinceLast since => since with { Kinds = Each(since.Kinds) },
            FromAfterLast after => after with { Kinds = Each(after.Kinds) },
            _ => window,
        })];

        ImmutableArray<Kind> Each(ImmutableArray<Kind> kinds) => [.. kinds.Select(Of)];

        T Of<T>(T kind) where T : Kind
        {
            var filtered = Vocabulary.Filtered.Where(one => one.Declaration.Id == kind.Id).ToList();
            return filtered.Count == 0 || places.Next(5) == 0 ? kind : (T)filtered[places.Next(filtered.Count)];
        }
    }

    private static KindFilter Is(Kind kind, string detail, bool isNot, params string[] values) => new(kind, [Test(kind, detail, isNot, values)]);

    private static DetailIs Test(Kind kind, string detail, bool isNot, params string[] values)
    {
        var place = Place(kind, detail);
        return new DetailIs(kind.Details[place], place, [.. values], isNot);
    }

    private static KindFilter Step(Kind kind, Comparison comparison, double low, double high, bool isNot)
    {
        var place = Place(kind, "step");
        return new KindFilter(kind, [new DetailNumber(kind.Details[place], place, new NumberTest(comparison, new Limit(low), new Limit(high)), isNot)]);
    }

    private static int Place(Kind kind, string detail) => kind.Details.IndexOf(kind.Details.Single(one => one.Name == detail));
}
