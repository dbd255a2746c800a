namespace Byrelaw.Judging.Tuning;

/// <summary>
/// Every number that a limit may be compared with, for any animal on any day: results, means over any stretch of results,
/// changes between any two, facts, places in the herd. More than those that decide, but never fewer.
/// </summary>
internal sealed class ComparedValues(HerdDays days, JudgingDays judging, RuleNumber number)
{
    private readonly Herd _herd = days.Herd;

    public IEnumerable<double> All() => number.Condition switch
    {
        FactNumberCondition fact => Each(animal => Fact(fact.Fact, animal), fact.Test),
        MeasuredCondition measured => Each(animal => Own(measured, animal), measured.Test),
        SeriesCondition { Test: { } test } series => Each(animal => Own(series, animal), test),
        MobMeasuredCondition mob => OfAll(new MobResults(_herd, mob.Measure.Id).All().Where(sample => sample.Sure.Length > 0)
            .SelectMany(sample => MobMeasuredCriterion.Range(mob.Aggregate, sample) is var (low, high) ? new[] { low, high } : []), mob.Test),
        MobCountCondition mob => OfAll(ResultsOf(mob.Measure), mob.Test),
        StandingCondition standing => Shares(standing),
        _ => throw MissingKind.Of(number.Condition, nameof(ComparedValues)),
    };

    /// <summary>What is her own, compared with the limit itself or with a share of her own fact.</summary>
    private IEnumerable<double> Each(Func<int, IEnumerable<double>> compared, NumberTest test) =>
        Enumerable.Range(0, _herd.Count).SelectMany(animal => AsLimit(compared(animal), test, animal));

    /// <summary>What is everybody's, compared with a share of anybody's fact.</summary>
    private IEnumerable<double> OfAll(IEnumerable<double> compared, NumberTest test)
    {
        var distinct = compared.Distinct().ToList();
        return FactOf(test) is null ? distinct : Enumerable.Range(0, _herd.Count).SelectMany(animal => AsLimit(distinct, test, animal));
    }

    private IEnumerable<double> AsLimit(IEnumerable<double> compared, NumberTest test, int animal)
    {
        if (FactOf(test) is not { } fact)
        {
            return compared;
        }

        var of = Fact(fact, animal).FirstOrDefault();
        return of == 0 ? [] : compared.Select(one => 100 * one / of);
    }

    private Fact? FactOf(NumberTest test) => (number.Number.IsHigh ? test.High : test.Low).PercentOf;

    private IEnumerable<double> Fact(Fact fact, int animal) =>
        _herd.Facts[fact.Id].States[animal] == FactState.Known ? [_herd.Facts[fact.Id].Numbers[animal]] : [];

    private IEnumerable<double> ResultsOf(MeasureKind measure)
    {
        var run = _herd.Runs[measure.Id];
        var mobs = _herd.MobRuns[measure.Id];
        return run.Low.Concat(run.High).Concat(mobs?.Low ?? []).Concat(mobs?.High ?? []);
    }

    private IEnumerable<double> Own(MeasuredCondition measured, int animal)
    {
        var run = _herd.Runs[measured.Measure.Id];
        var (from, to) = (run.Starts[animal], run.Starts[animal + 1]);
        var (low, high) = (run.Low[from..to], run.High[from..to]);
        return measured.Aggregate switch
        {
            Aggregate.Average => Means(low).Concat(Means(high)),
            Aggregate.Change => low.SelectMany(a => high.SelectMany(b => new[] { Limits.Round(a - b), Limits.Round(b - a) })),
            _ => low.Concat(high),
        };
    }

    /// <summary>Of a series each day has one value, which is any of its results.</summary>
    private IEnumerable<double> Own(SeriesCondition series, int animal)
    {
        var run = _herd.Runs[series.Of.Id];
        var days = Enumerable.Range(run.Starts[animal], run.Starts[animal + 1] - run.Starts[animal]).GroupBy(place => run.Days[place]).ToList();
        double[] low = [.. days.Select(day => day.Min(place => run.Low[place]))];
        double[] high = [.. days.Select(day => day.Max(place => run.High[place]))];
        return series.How == Aggregate.Average ? Means(low).Concat(Means(high))
            : days.SelectMany(day => day.SelectMany(place => new[] { run.Low[place], run.High[place] })).Concat(low).Concat(high);
    }

    /// <summary>The mean of each stretch of neighbours, summed up in the order in which the judge does.</summary>
    private static IEnumerable<double> Means(double[] values)
    {
        for (var from = 0; from < values.Length; from++)
        {
            double sum = 0;
            for (var to = from; to < values.Length; to++)
            {
                sum += values[to];
                yield return Limits.Round(sum / (to - from + 1));
            }
        }
    }

    /// <summary>Where the top of the herd takes in one animal more: at each k-th of every size the herd may have.</summary>
    private IEnumerable<double> Shares(StandingCondition standing)
    {
        var herdmates = new HerdmateDays(days, standing, _herd.Vocabulary.Calving?.Id);
        var sizes = new SortedSet<int>();
        for (var day = judging.SpanFirst; day <= judging.SpanLast;)
        {
            var until = judging.SpanLast;
            foreach (var strict in new[] { false, true })
            {
                var mates = herdmates.On(day, strict, ref until);
                sizes.UnionWith(Enumerable.Range(mates.Sure.Count, mates.Perhaps.Count + 1));
            }

            day = Math.Max(until, day) + 1;
        }

        return sizes.Where(size => size > 0).SelectMany(size => Enumerable.Range(0, size + 1).Select(place => 100.0 * place / size));
    }
}
