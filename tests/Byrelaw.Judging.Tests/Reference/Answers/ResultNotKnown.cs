namespace Byrelaw.Judging.Tests.Reference;

/// <summary>"<c>pass</c> never applies where a sample exists whose result is not known."</summary>
public static class ResultNotKnown
{
    /// <summary>The condition is not known, and one of those that make it so looks at such a sample.</summary>
    public static bool StandsIn(Condition condition, Knowledge knowledge, Moment moment) =>
        ConditionReference.At(condition, knowledge, moment) == Truth.Unknown
        && Leaves.Of(condition, knowledge, moment).Any(leaf => leaf is { Decides: true, Truth: Truth.Unknown }
            && (IsUsed(leaf.Condition, knowledge, moment) || new Barred(knowledge, moment.Animal, moment.Day).Is(leaf.Condition)));

    /// <summary>Strictly, it may not be known what days are looked at; a result that is awaited in those that there are otherwise is awaited all the same.</summary>
    private static bool IsUsed(Condition leaf, Knowledge knowledge, Moment moment)
    {
        var otherwise = moment with { Strict = false };
        return moment.Strict && knowledge.Windows.Possible(leaf.Windows, moment.Animal, moment.Day, strict: true) is null
            ? ConditionReference.At(leaf, knowledge, otherwise) == Truth.Unknown && IsUsedBy(leaf, knowledge, otherwise)
            : IsUsedBy(leaf, knowledge, moment);
    }

    private static bool IsUsedBy(Condition leaf, Knowledge knowledge, Moment moment) => leaf switch
    {
        CountCondition count => Stretches(count.Windows, knowledge, moment).Any(stretch => CountReference.UsesResultNotKnown(count, stretch, knowledge, moment)),
        ApartCondition apart => IsUsedBy(ApartReference.Counting(apart), knowledge, moment),
        TestCondition test => Stretches(test.Windows, knowledge, moment).Any(stretch =>
            SampleReference.In(test.Test, stretch, knowledge, moment).Latest().Any(sample => sample.ResultNotKnown)
            || TestReference.IsBarredByGroup(test, stretch, knowledge, moment)),
        MeasuredCondition measured => Stretches(measured.Windows, knowledge, moment).Any(stretch =>
            IsUsed(measured.Aggregate, SampleReference.In(measured.Measure, stretch, knowledge, moment))),
        SeriesCondition series => Stretches(series.Windows, knowledge, moment).Any(stretch => IsUsed(series, SeriesReference.Looked.At(series, stretch, knowledge, moment))),
        MobMeasuredCondition or MobCountCondition => MobReference.UsesResultNotKnown(leaf, knowledge, moment),
        _ => false,
    };

    private static bool IsUsed(Aggregate aggregate, Samples samples) => aggregate switch
    {
        Aggregate.Latest => samples.Latest().Any(sample => sample.ResultNotKnown),
        Aggregate.Change => samples.Latest().Concat(samples.Earliest()).Any(sample => sample.ResultNotKnown),
        _ => Any(samples),
    };

    private static bool IsUsed(SeriesCondition condition, SeriesReference.Looked looked) => looked.Unread || looked.Rows.Any(row => row.ResultNotKnown)
        || (looked.IsEnough && condition.Results == 0 ? looked.OfGroups.Any(row => row.ResultNotKnown || condition.Answers.Contains(row.Answer) == condition.IsNot) : looked.OfGroups.Count > 0);

    private static bool Any(Samples samples) => samples.AnyUnread || samples.Recorded.Any(sample => sample.ResultNotKnown);

    private static IEnumerable<Stretch> Stretches(IReadOnlyList<Window> windows, Knowledge knowledge, Moment moment) =>
        knowledge.Windows.Possible(windows, moment.Animal, moment.Day, moment.Strict) ?? [];
}
