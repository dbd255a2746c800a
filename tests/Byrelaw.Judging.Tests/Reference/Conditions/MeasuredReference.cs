namespace Byrelaw.Judging.Tests.Reference;

/// <summary>
/// "Results. <c>latest</c> is the latest recorded in the window and needs no completeness; none: not known. ... A result not
/// known may be any value: counts, <c>lowest</c>, <c>highest</c>, <c>average</c> and <c>change</c> answer only what is the
/// same for every value. <c>&lt;3</c> and <c>&gt;10</c> answer what is the same for every value they allow."
/// </summary>
public static class MeasuredReference
{
    public static Truth At(MeasuredCondition condition, Knowledge knowledge, Moment moment) =>
        knowledge.Windows.Possible(condition.Windows, moment.Animal, moment.Day, moment.Strict) is { } possible
            ? Kleene.SameForAll(possible.Select(stretch => Over(condition, stretch, knowledge, moment)))
            : Truth.Unknown;

    /// <summary>Over the days given.</summary>
    public static Truth Over(MeasuredCondition condition, Stretch stretch, Knowledge knowledge, Moment moment)
    {
        var facts = knowledge.Farm.Animals[moment.Animal].Facts;
        var values = Values(condition, SampleReference.In(condition.Measure, stretch, knowledge, moment));
        return Kleene.SameForAll(values.Select(value => NumberReference.Compare(condition.Test, value, facts)));
    }

    /// <summary>The values that must all give one answer; none where nothing is on record.</summary>
    public static IEnumerable<ValueRange> Values(MeasuredCondition condition, Samples samples)
    {
        var known = samples.Recorded.Select(row => row.Values).ToList();
        switch (condition.Aggregate)
        {
            case Aggregate.Latest:
                // "Several results on the latest day: true if true for all, false if false for all, else not known."
                return samples.Latest().Select(sample => sample.Values);
            case Aggregate.Change:
                // "latest minus earliest in the window"; results of one day only have nothing to be taken from.
                return from latest in samples.Latest()
                       from earliest in samples.Earliest()
                       select latest.Day == earliest.Day
                           ? ValueRange.Any
                           : ValueRange.Minus(latest.Values, earliest.Values).Rounded();
            case Aggregate.Lowest when known.Count > 0:
                return [new ValueRange(samples.AnyUnread || known.Any(value => value.Low is null) ? null : known.Min(value => value.Low), LowestHigh(known))];
            case Aggregate.Highest when known.Count > 0:
                return [new ValueRange(HighestLow(known), samples.AnyUnread || known.Any(value => value.High is null) ? null : known.Max(value => value.High))];
            case Aggregate.Average when known.Count > 0:
                var sure = !samples.AnyUnread;
                return [new ValueRange(
                    sure && known.All(value => value.Low is not null) ? known.Average(value => value.Low!.Value) : null,
                    sure && known.All(value => value.High is not null) ? known.Average(value => value.High!.Value) : null).Rounded()];
            default:
                return [];
        }
    }

    // What is not known may be higher than all others, so the lowest is at most the least of what is known.
    private static decimal? LowestHigh(List<ValueRange> known) => known.Where(value => value.High is not null).Select(value => value.High).DefaultIfEmpty(null).Min();

    private static decimal? HighestLow(List<ValueRange> known) => known.Where(value => value.Low is not null).Select(value => value.Low).DefaultIfEmpty(null).Max();
}
