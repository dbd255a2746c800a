namespace Byrelaw.Language.Binding.Conditions;

/// <summary>Conditions on results of measures and tests, hers or her mob's.</summary>
internal static class ResultBinding
{
    private const string Compared = "a comparison such as `at least 5`";

    /// <summary><c>latest body condition ...</c>, <c>average liver copper of her mob ...</c>.</summary>
    public static Condition? Result(this Context context, ResultSyntax result)
    {
        if (result.BelowNought is { } limit)
        {
            return context.Fail<Condition>(ConditionProblems.BelowNought(limit.Value.Span, result.Tails.OfType<CompareSyntax>().First().Low.Value.Value > 0));
        }

        switch (context.Names.Find(result.Name.Text))
        {
            case KindSymbol { Kind: MeasureKind measure }:
                return context.Filtered(measure, result.Name) is { } measured ? context.Measured(result, measured) : null;
            case KindSymbol { Kind: TestKind test }:
                return context.Filtered(test, result.Name) is { } tested ? context.Tested(result, tested) : null;
            case KindSymbol { Kind: EventKind happened } found:
                return context.Fail<Condition>(NameProblems.WrongSort(
                    result.Name.Named.Span, found, "a measure or a test", $"an event is counted: `no {happened.Name} in the last 30 days`"));
            case FactSymbol { Fact: var fact } found:
                return context.Fail<Condition>(NameProblems.WrongSort(
                    result.Name.Named.Span, found, "a measure or a test", $"a fact has no dates and stands by itself: `{fact.Name} {(fact.Type == FactType.OneOf ? $"is {fact.Values.FirstOrDefault()}" : "at least 5")}`"));
            default:
                return context.Fail<Condition>(context.NotFound(result.Name.Named, IsResult, "a measure, test, event or fact"));
        }
    }

    /// <summary><c>at most 1 of her mob with serum copper ...</c>.</summary>
    public static MobCountCondition? MobCount(this Context context, MobCountSyntax mob)
    {
        var count = context.CountTest(mob.Test);
        if (context.Measure(mob.Measure) is not { } measure)
        {
            return null;
        }

        var tails = new TailSorter(context, mob, measure.Name);
        var (windows, demand, animals) = (context.Windows(tails), context.Demand(tails, measure, isChange: false), context.Animals(tails));
        var fits = tails.Finish(demandFound: true);
        context.WarnWithoutWindow(windows, tails);
        return fits && count is not null && windows is { } when && demand is not null && animals is { } least
            ? new MobCountCondition(count, measure, when, demand, least) { Span = mob.Span }
            : null;
    }

    private static Condition? Measured(this Context context, ResultSyntax result, MeasureKind measure)
    {
        var tails = new TailSorter(context, result, measure.Name);
        var windows = context.Windows(tails);
        if (tails.Take<IsSyntax>() is { } @is)
        {
            return context.Fail<Condition>(WindowProblems.IsWithNumber(@is.Span, measure.Name));
        }

        if (IsOfASeries(result))
        {
            return context.Series(result, measure, tails, windows, context.Demand(tails, measure, isChange: false), []);
        }

        var isOfMob = tails.Take<OfHerMobSyntax>() is not null;
        var demand = context.Demand(tails, measure, result.Aggregate == Aggregate.Change);
        var animals = isOfMob ? context.Animals(tails) : 0;
        var fits = tails.Finish(demandFound: true);
        context.WarnWithoutWindow(windows, tails);
        if (isOfMob && result.Aggregate is Aggregate.Latest or Aggregate.Change)
        {
            return context.Fail<Condition>(ConditionProblems.NotOverAMob(result.Span, result.Aggregate == Aggregate.Latest ? "latest" : "change in"));
        }

        return !fits || windows is not { } when || demand is null || animals is not { } least ? null
            : isOfMob ? new MobMeasuredCondition(result.Aggregate, measure, when, least, demand) { Span = result.Span }
            : new MeasuredCondition(result.Aggregate, measure, when, demand) { Span = result.Span };
    }

    private static Condition? Tested(this Context context, ResultSyntax result, TestKind test)
    {
        if (result.Aggregate is not (Aggregate.Latest or Aggregate.Every))
        {
            return context.Fail<TestCondition>(WindowProblems.LatestOfATest(result.Span, test.Name));
        }

        var tails = new TailSorter(context, result, test.Name);
        var windows = context.Windows(tails);
        if (tails.Take<CompareSyntax>() is { } compare)
        {
            return context.Fail<TestCondition>(WindowProblems.CompareWithWord(compare.Span, test.Name));
        }

        if (tails.Take<IsSyntax>() is not { } @is)
        {
            tails.Finish(demandFound: false);
            return context.Fail<TestCondition>(ConditionProblems.NoDemand(result.Span, test.Name, "`is` and an answer"));
        }

        if (@is is { Not: true, IsJoinedByOr: true })
        {
            var before = result.Span with { Length = @is.Span.Start - result.Span.Start };
            return context.Fail<Condition>(ConditionProblems.NotEither(result.Span, before.Text.Trim(), [.. @is.Values.Select(value => value.Span.Text)]));
        }

        var answers = context.Answers(test, @is.Values);
        if (IsOfASeries(result))
        {
            return context.Series(result, test, tails, windows, null, answers, @is.Not);
        }

        var fits = tails.Finish(demandFound: true);
        context.WarnWithoutWindow(windows, tails);
        return fits && windows is { } when && answers is { } places ? new TestCondition(test, when, places, @is.Not) { Span = result.Span } : null;
    }

    /// <summary>Whether several results are asked for together.</summary>
    private static bool IsOfASeries(ResultSyntax result) =>
        result.Aggregate == Aggregate.Every || (result.Aggregate is Aggregate.Average or Aggregate.Lowest or Aggregate.Highest && result.Tails.Any(tail => tail is OfTheLastSyntax));

    private static SeriesCondition? Series(
        this Context context, ResultSyntax result, Kind of, TailSorter tails, ImmutableArray<Window>? windows, NumberTest? demand, ImmutableArray<int>? answers, bool isNot = false)
    {
        var last = tails.Take<OfTheLastSyntax>();
        var results = last is null ? 0 : context.Count(last.Count);
        var fits = tails.Finish(demandFound: true);
        if (last is not null && results is 0 or 1)
        {
            return context.Fail<SeriesCondition>(ConditionProblems.OneResult(last!.Span, of.Name, results.Value));
        }

        if (last is null)
        {
            context.WarnWithoutWindow(windows, tails);
        }

        return fits && results is { } count && windows is { } when && answers is { } places && (demand is not null || of is TestKind)
            ? new SeriesCondition(result.Aggregate, of, count, when) { Test = demand, Answers = places, IsNot = isNot, Span = result.Span } : null;
    }

    private static ImmutableArray<int>? Answers(this Context context, TestKind test, ImmutableArray<ValueSyntax> values)
    {
        var places = ImmutableArray.CreateBuilder<int>(values.Length);
        var isWhole = true;
        foreach (var value in values)
        {
            var place = test.PlaceOf(value.Text);
            if (place < 0)
            {
                context.Problems.Add(NameProblems.NoSuchAnswer(value.Span, value.Text, test.Name, test.Answers));
                isWhole = false;
            }
            else if (!places.Contains(place))
            {
                places.Add(place);
            }
        }

        return isWhole ? places.ToImmutable() : null;
    }

    private static NumberTest? Demand(this Context context, TailSorter tails, MeasureKind measure, bool isChange) =>
        tails.Take<CompareSyntax>() is { } compare
            ? context.NumberTest(compare, AmountSubject.Of(measure, isChange))
            : context.Fail<NumberTest>(ConditionProblems.NoDemand(tails.Span, measure.Name, Compared));

    private static int? Animals(this Context context, TailSorter tails) =>
        tails.Take<FromAnimalsSyntax>() is { } from ? context.Count(from.Count) is not 0 and var animals ? animals : context.None<int>(ConditionProblems.MobWithoutAnimals(from.Span, saysNone: true)) : context.None<int>(ConditionProblems.MobWithoutAnimals(tails.Span));

    private static void WarnWithoutWindow(this Context context, ImmutableArray<Window>? windows, TailSorter tails)
    {
        if (windows is { IsEmpty: true })
        {
            context.Problems.Add(ConditionProblems.LookupWithoutWindow(tails.Span, tails.Name));
        }
    }

    private static MeasureKind? Measure(this Context context, NameSyntax name) =>
        context.Names.Find(name.Text) is KindSymbol { Kind: MeasureKind measure }
            ? context.Filtered(measure, name)
            : context.Fail<MeasureKind>(context.NotFound(name.Named, symbol => symbol is KindSymbol { Kind: MeasureKind }, "a measure"));

    private static bool IsResult(Symbol symbol) => symbol is KindSymbol { Kind: MeasureKind or TestKind };
}
