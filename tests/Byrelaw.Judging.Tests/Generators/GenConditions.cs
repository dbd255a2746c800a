namespace Byrelaw.Judging.Tests.Generators;

/// <summary>Every form of condition, in the words of <see cref="Words"/>.</summary>
public sealed class GenConditions(Season season)
{
    private static readonly Gen<Comparison> AnyComparison =
        Gen.OneOf(Comparison.AtLeast, Comparison.AtLeast, Comparison.AtMost, Comparison.MoreThan, Comparison.LessThan, Comparison.Exactly, Comparison.Between);

    private static readonly Gen<CountTest> AnyCount = Gen.Frequency(
        (4, Gen.Const(new CountTest(Comparison.Exactly, 0, 0))),
        (4, from comparison in AnyComparison
            from low in Gen.Int[0, 3]
            from more in Gen.Int[0, 2]
            select comparison == Comparison.Between ? new CountTest(comparison, low, low + more) : new CountTest(comparison, low, low)));

    private static readonly Gen<TimeTest> AnyTime =
        from comparison in AnyComparison
        from pair in GenLengths.Pair
        select comparison == Comparison.Between ? new TimeTest(comparison, pair.Short, pair.Long) : new TimeTest(comparison, pair.Long, pair.Long);

    private static readonly Gen<TimeTest> AnyAge =
        from comparison in AnyComparison
        from a in GenLengths.Age
        from b in GenLengths.Age
        let low = GenLengths.RoughDays(a) <= GenLengths.RoughDays(b) ? a : b
        select new TimeTest(comparison, low, comparison == Comparison.Between ? (low == a ? b : a) : low);

    private static readonly Gen<ImmutableArray<Kind>> LastKinds = Gen.Frequency(
        (5, Gen.OneOf<Kind>(Words.Calving, Words.Heat, Words.Mating, Words.BullIn, Words.Mastitis).Select(kind => ImmutableArray.Create(kind))),
        (2, Gen.Const(ImmutableArray.Create<Kind>(Words.Heat, Words.Mating))),
        (1, Gen.OneOf<Kind>(Words.Weight, Words.Uterus, Words.Copper, Words.Purchase).Select(kind => ImmutableArray.Create(kind))),
        (1, Gen.Const(ImmutableArray.Create<Kind>(Words.Calving, Words.Virus))));

    private static readonly Gen<ImmutableArray<Counted>> AnyCounted = Gen.Frequency(
        (5, Gen.OneOf([.. Words.PlainEvents]).Select(kind => ImmutableArray.Create(new Counted(kind)))),
        (3, Gen.Const(ImmutableArray.Create(new Counted(Words.Heat), new Counted(Words.Mating)))),
        (3, Gen.Int[0, 2].Select(answer => ImmutableArray.Create(new Counted(Words.Virus, answer)))),
        (1, Gen.Const(ImmutableArray.Create(new Counted(Words.Virus, 0), new Counted(Words.Virus, 2)))),
        (1, Gen.Const(ImmutableArray.Create(new Counted(Words.Uterus, 1), new Counted(Words.Mastitis)))));

    private Gen<DateReference> AnyDate => Gen.OneOf(
        Gen.Const(new DateReference("collection", season.Collection)),
        Gen.Const(new DateReference("first transfer", season.FirstTransfer)),
        season.Past.Select(date => new DateReference(null, date)));

    private static readonly Gen<Window> AfterBull = GenLengths.Any.Select(wait => (Window)new FromAfterSpell(wait, Words.WithBull) { Span = Words.Nowhere });

    private Gen<WindowDay> AnyDay => Gen.Frequency((1, AnyDate.Select(date => new WindowDay(date, []))), (2, LastKinds.Select(kinds => new WindowDay(null, kinds))));

    private Gen<Window> AnyWindow => Gen.Frequency<Window>(
        (5, GenLengths.Any.Select(length => (Window)new InTheLast(length) { Span = Words.Nowhere })),
        (2, GenLengths.Any.Select(length => (Window)new AtLeastAgo(length) { Span = Words.Nowhere })),
        (2, GenLengths.Pair.Select(pair => (Window)new BetweenAgo(pair.Short, pair.Long) { Span = Words.Nowhere })),
        (2, Gen.Select(GenLengths.Any, AnyDate, (length, date) => (Window)new BeforeDate(length, date) { Span = Words.Nowhere })),
        (4, LastKinds.Select(kinds => (Window)new SinceLast(kinds) { Span = Words.Nowhere })),
        (3, Gen.Select(GenLengths.Any, LastKinds, (wait, kinds) => (Window)new FromAfterLast(wait, kinds) { Span = Words.Nowhere })),
        (1, AfterBull),
        (1, AnyDay.Select(day => (Window)new BeforeDay(day) { Span = Words.Nowhere })),
        (2, Gen.Select(GenLengths.Any, AnyDay, (length, day) => (Window)new DaysAfter(length, day) { Span = Words.Nowhere })),
        (1, AnyDate.Select(date => (Window)new SinceDate(date) { Span = Words.Nowhere })),
        (1, Gen.Const((Window)new SinceBirth { Span = Words.Nowhere })),
        (1, Gen.Const((Window)new Ever { Span = Words.Nowhere })));

    private Gen<ImmutableArray<Window>> CountWindows => Gen.Frequency(
        (4, AnyWindow.Select(window => ImmutableArray.Create(window))),
        (1, Gen.Select(AnyWindow, AnyWindow, (a, b) => ImmutableArray.Create(a, b))));

    private Gen<ImmutableArray<Window>> LookupWindows => Gen.Frequency(
        (1, Gen.Const(ImmutableArray<Window>.Empty)),
        (5, AnyWindow.Select(window => ImmutableArray.Create(window))),
        (1, Gen.Select(AnyWindow, AnyWindow, (a, b) => ImmutableArray.Create(a, b))));

    private static Gen<Limit> LimitFor(MeasureKind measure, bool change) => change
        ? Gen.OneOf(-1.0, -1.1, -0.5, 0, 0.5, -20).Select(value => new Limit(value))
        : measure.Name switch
        {
            "weight" => Gen.Frequency(
                (2, Gen.OneOf(GenFarms.Weights).Select(value => new Limit((double)value))),
                (1, Gen.OneOf(60.0, 55.5, 100).Select(percent => new Limit(percent, Words.MatureWeight)))),
            "body condition" => Gen.OneOf(GenFarms.Scores).Select(value => new Limit((double)value)),
            _ => Gen.OneOf(GenFarms.Coppers).Select(value => new Limit((double)value)),
        };

    private static Gen<NumberTest> NumberFor(MeasureKind measure, bool change) =>
        from comparison in AnyComparison
        from a in LimitFor(measure, change)
        from b in LimitFor(measure, change)
        let ordered = a.PercentOf is not null || b.PercentOf is not null || a.Value <= b.Value
        let low = ordered ? a : b
        select new NumberTest(comparison, low, comparison == Comparison.Between ? (ordered ? b : a) : low);

    private Gen<Condition> Measured =>
        from aggregate in Gen.OneOf(Aggregate.Latest, Aggregate.Latest, Aggregate.Lowest, Aggregate.Highest, Aggregate.Average, Aggregate.Change)
        from measure in Gen.OneOf([.. Words.Measures])
        from windows in LookupWindows
        from test in NumberFor(measure, aggregate == Aggregate.Change)
        select (Condition)new MeasuredCondition(aggregate, measure, windows, test) { Span = Words.Nowhere };

    private Gen<Condition> Test =>
        from test in Gen.OneOf([.. Words.Tests])
        from windows in LookupWindows
        from answer in Gen.Int[0, test.Answers.Length - 1]
        from another in Gen.Int[0, test.Answers.Length - 1]
        from isNot in Gen.OneOf(false, false, true)
        select (Condition)new TestCondition(test, windows, [.. new[] { answer, isNot ? answer : another }.Distinct()], isNot) { Span = Words.Nowhere };

    private Gen<Condition> Apart =>
        from counted in AnyCounted
        from days in Gen.OneOf(2, 2, 2, 3, 4)
        from comparison in Gen.OneOf(Comparison.AtLeast, Comparison.AtMost, Comparison.Between, Comparison.Between)
        from pair in GenLengths.Pair
        from windows in CountWindows
        select (Condition)new ApartCondition(
            days, counted, comparison == Comparison.Between ? new TimeTest(comparison, pair.Short, pair.Long) : new TimeTest(comparison, pair.Short, pair.Short), windows)
        { Span = Words.Nowhere };

    private Gen<Condition> Series =>
        from results in Gen.OneOf(0, 2, 2, 3)
        from windows in LookupWindows
        from measured in Gen.Bool
        from measure in Gen.OneOf([.. Words.Measures])
        from how in Gen.OneOf(Aggregate.Average, Aggregate.Lowest, Aggregate.Highest, Aggregate.Every)
        from demand in NumberFor(measure, false)
        from test in Gen.OneOf([.. Words.Tests])
        from answer in Gen.Int[0, test.Answers.Length - 1]
        from isNot in Gen.Bool
        select (Condition)(measured
            ? new SeriesCondition(results == 0 ? Aggregate.Every : how, measure, results, windows) { Test = demand, Span = Words.Nowhere }
            : new SeriesCondition(Aggregate.Every, test, results, windows) { Answers = [answer], IsNot = isNot, Span = Words.Nowhere });

    private Gen<Condition> MobMeasured =>
        from aggregate in Gen.OneOf(Aggregate.Lowest, Aggregate.Highest, Aggregate.Average)
        from measure in Gen.OneOf([.. Words.Measures])
        from windows in LookupWindows
        from fromAtLeast in Gen.Int[1, 3]
        from test in NumberFor(measure, false)
        select (Condition)new MobMeasuredCondition(aggregate, measure, windows, fromAtLeast, test) { Span = Words.Nowhere };

    private Gen<Condition> MobCount =>
        from count in AnyCount
        from measure in Gen.OneOf([.. Words.Measures])
        from windows in LookupWindows
        from fromAtLeast in Gen.Int[1, 3]
        from test in NumberFor(measure, false)
        select (Condition)new MobCountCondition(count, measure, windows, test, fromAtLeast) { Span = Words.Nowhere };

    /// <summary>Whether she runs with a bull.</summary>
    public Gen<Condition> Spell =>
        from not in Gen.Bool
        from windows in LookupWindows
        select (Condition)new SpellCondition(Words.WithBull, not, windows) { Span = Words.Nowhere };

    private static readonly Gen<Condition> FactNumber =
        from which in Gen.Bool
        from comparison in AnyComparison
        from low in Gen.OneOf(90.0, 100, 110.5, 120)
        from more in Gen.OneOf(0.0, 10, 20)
        let high = comparison == Comparison.Between ? low + more : low
        select (Condition)(which
            ? new FactNumberCondition(Words.Index, new NumberTest(comparison, new Limit(low), new Limit(high))) { Span = Words.Nowhere }
            : new FactNumberCondition(Words.MatureWeight, new NumberTest(comparison, new Limit(5 * low), new Limit(5 * high))) { Span = Words.Nowhere });

    private static readonly Gen<Condition> FactText = Gen.OneOf(
        Gen.Select(Gen.OneOf("Friesian", "Jersey", "crossbred"), Gen.Bool, (breed, isNot) =>
            (Condition)new FactTextCondition(Words.Breed, [breed], isNot) { Span = Words.Nowhere }),
        Gen.Const((Condition)new FactTextCondition(Words.Breed, ["Friesian", "Jersey"], false) { Span = Words.Nowhere }),
        Gen.Select(Gen.Bool, Gen.Frequency((3, Gen.Const(false)), (1, Gen.Const(true))), (isNot, isUnseen) =>
            (Condition)new FactTextCondition(Words.Temper, ["quiet"], isNot) { Doubted = isUnseen ? ["wild"] : [], Span = Words.Nowhere }));

    private Gen<Condition> FactDate => Gen.Select(Gen.OneOf(Gen.Const(season.Collection), Gen.Const(new LocalDate(2023, 2, 1))), Gen.Bool,
        (date, isNot) => (Condition)new FactDateCondition(Words.DamTested, date, isNot) { Span = Words.Nowhere });

    private static readonly Gen<Condition> Recorded = Gen.Select(Gen.OneOf(Words.Identity, Words.Breed, Words.Index, Words.DamTested), Gen.OneOf(false, false, true),
        (fact, isNot) => (Condition)new RecordedCondition(fact, isNot) { Span = Words.Nowhere });

    private static readonly Gen<Condition> InMob =
        from mobs in Gen.OneOf(ImmutableArray.Create("Home"), ImmutableArray.Create("back"), ImmutableArray.Create("Home", "Back"), ImmutableArray.Create("Home", "Nowhere"))
        from isNot in Gen.Bool
        select (Condition)new InMobCondition(mobs, isNot) { Span = Words.Nowhere };

    private static readonly Gen<Condition> Standing =
        from not in Gen.OneOf(true, true, false)
        from percent in Gen.OneOf(20.0, 25, 50, 33.3)
        from @group in Gen.OneOf(HerdGroup.Herd, HerdGroup.Cows, HerdGroup.Heifers)
        from withValue in Gen.Bool
        select (Condition)new StandingCondition(Words.Index, not, percent, @group) { WithValue = withValue, Span = Words.Nowhere };

    /// <summary>Forms whose answer moves no one way with a window that may begin on many days: two anchors, an exact number, a range, a mean.</summary>
    public Gen<Condition> Doubtful
    {
        get
        {
            var anchored = Gen.Frequency<Window>(
                (2, LastKinds.Select(kinds => (Window)new SinceLast(kinds) { Span = Words.Nowhere })),
                (1, AfterBull),
                (1, Gen.Select(GenLengths.Any, LastKinds, (wait, kinds) => (Window)new FromAfterLast(wait, kinds) { Span = Words.Nowhere })));
            var windows = Gen.Frequency(
                (1, anchored.Select(one => ImmutableArray.Create(one))),
                (3, Gen.Select(anchored, anchored, (one, two) => ImmutableArray.Create(one, two))),
                (1, Gen.Select(anchored, AnyWindow, (one, two) => ImmutableArray.Create(one, two))));
            var exact =
                from comparison in Gen.OneOf(Comparison.Exactly, Comparison.Between)
                from low in Gen.Int[0, 3]
                from more in Gen.Int[0, 2]
                select new CountTest(comparison, low, comparison == Comparison.Between ? low + more : low);
            return Gen.Frequency(
                (4, Gen.Select(exact, AnyCounted, windows, (test, counted, when) => (Condition)new CountCondition(test, counted, when) { Span = Words.Nowhere })),
                (2, Gen.Select(Measured, windows, (measured, when) => measured with { Windows = when })),
                (1, Gen.Select(MobMeasured, windows, (measured, when) => measured with { Windows = when })),
                (1, Gen.Select(MobCount, windows, (measured, when) => measured with { Windows = when })),
                (1, Gen.Select(Test, windows, (test, when) => test with { Windows = when })),
                (1, Gen.Select(Spell, windows, (spell, when) => spell with { Windows = when })),
                (1, Gen.Select(AnyTime, LastKinds, (test, kinds) => (Condition)new TimeSinceCondition(test, kinds) { Span = Words.Nowhere })));
        }
    }

    /// <summary>A count of one kind since the last of another.</summary>
    public static Gen<Condition> CountedSince =>
        from test in AnyCount
        from kinds in Gen.Shuffle(GenFarms.LateKinds)
        from wait in Gen.Frequency((2, Gen.Const(-1)), (1, Gen.Int[0, 20]))
        let last = ImmutableArray.Create<Kind>(kinds[1])
        let window = wait < 0 ? (Window)new SinceLast(last) { Span = Words.Nowhere } : new FromAfterLast(new TimeLength(wait, TimeUnit.Days), last) { Span = Words.Nowhere }
        select (Condition)new CountCondition(test, [new Counted(kinds[0])], [window]) { Span = Words.Nowhere };

    /// <summary>Forms that can ask for entries by their details.</summary>
    public Gen<Condition> OfDetails => Gen.Frequency(
        (6, Gen.Select(AnyCount, AnyCounted, CountWindows, (test, counted, windows) => (Condition)new CountCondition(test, counted, windows) { Span = Words.Nowhere })),
        (4, Gen.Select(AnyTime, LastKinds, (test, kinds) => (Condition)new TimeSinceCondition(test, kinds) { Span = Words.Nowhere })),
        (4, Measured),
        (4, Test),
        (2, Series),
        (2, Apart),
        (2, MobMeasured),
        (2, MobCount));

    /// <summary>A condition that is neither a list nor a name.</summary>
    public Gen<Condition> Leaf => Gen.Frequency(
        (6, Gen.Select(AnyCount, AnyCounted, CountWindows, (test, counted, windows) => (Condition)new CountCondition(test, counted, windows) { Span = Words.Nowhere })),
        (4, Gen.Select(AnyTime, LastKinds, (test, kinds) => (Condition)new TimeSinceCondition(test, kinds) { Span = Words.Nowhere })),
        (1, AnyAge.Select(test => (Condition)new AgeCondition(test) { Span = Words.Nowhere })),
        (1, AnyCount.Select(test => (Condition)new ParityCondition(test) { Span = Words.Nowhere })),
        (1, FactNumber),
        (1, FactText),
        (1, FactDate),
        (1, Recorded),
        (5, Measured),
        (3, Test),
        (2, Series),
        (2, Apart),
        (2, MobMeasured),
        (2, MobCount),
        (2, Spell),
        (1, InMob),
        (2, Standing));

    /// <summary>A condition, a list or a name, as a rule or a define may hold; now and then a broken one.</summary>
    /// <param name="defines">How many defines stand before it.</param>
    /// <param name="broken">Whether it may be one that could not be read.</param>
    public Gen<Condition> Any(int defines, bool broken = true)
    {
        var item = defines == 0
            ? Leaf
            : Gen.Frequency((4, Leaf), (2, Named(defines).Select(named => (Condition)named)));
        var bullet = broken ? Gen.Frequency((40, item), (1, Gen.Const((Condition)new BrokenCondition { Span = Words.Nowhere }))) : item;
        var list =
            from kind in Gen.OneOf(ListKind.AnyOf, ListKind.AllOf, ListKind.NoneOf, ListKind.AtLeastOf)
            from items in bullet.Array[1, 3]
            select (Condition)new ListCondition(kind, kind == ListKind.AtLeastOf ? Math.Min(2, items.Length) : 0, [.. items]) { Span = Words.Nowhere };
        return Gen.Frequency((5, item), (2, list));
    }

    /// <summary>A name defined before.</summary>
    public static Gen<NamedCondition> Named(int defines) => Gen.Select(Gen.Int[0, defines - 1], Gen.Bool,
        (index, not) => new NamedCondition(GenRulebooks.DefineName(index), index, not) { Span = Words.Nowhere });
}
