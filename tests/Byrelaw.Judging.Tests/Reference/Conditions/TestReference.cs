namespace Byrelaw.Judging.Tests.Reference;

/// <summary>
/// "A sample whose result is blank or <c>pending</c>, or an answer that was not declared, <em>is</em> the latest sample, its
/// result not known: an older one never stands in. ... Several results on the latest day: true if true for all, false if
/// false for all, else not known."
/// </summary>
public static class TestReference
{
    public static Truth At(TestCondition condition, Knowledge knowledge, Moment moment) =>
        knowledge.Windows.Possible(condition.Windows, moment.Animal, moment.Day, moment.Strict) is { } possible
            ? Kleene.SameForAll(possible.Select(stretch => In(condition, stretch, knowledge, moment)))
            : Truth.Unknown;

    /// <summary>Whether a row of a mob or the herd keeps it open: it is known by her own, or would be against her with it ("where they are bad").</summary>
    public static bool IsBarredByGroup(TestCondition condition, Stretch stretch, Knowledge knowledge, Moment moment)
    {
        var hers = EitherWayReference.MayBeHers(condition.Test, stretch, knowledge, moment);
        return hers.Count > 0 && (Own(condition, stretch, knowledge, moment, []) != Truth.Unknown
            ? In(condition, stretch, knowledge, moment) == Truth.Unknown
            : SampleReference.In(condition.Test, stretch, knowledge, moment).Recorded.Count == 0
                && hers.Any(row => Own(condition, stretch, knowledge, moment, [row]) != Truth.True));
    }

    /// <summary>The last day of a mob's or the herd's row that may be hers and says otherwise than her own latest.</summary>
    public static int LastAgainst(TestCondition condition, Stretch stretch, Knowledge knowledge, Moment moment)
    {
        var own = Own(condition, stretch, knowledge, moment, []);
        return EitherWayReference.MayBeHers(condition.Test, stretch, knowledge, moment)
            .Where(row => own != Truth.Unknown && Own(condition, stretch, knowledge, moment, [row]) != own).Select(row => row.Day).DefaultIfEmpty(int.MinValue).Max();
    }

    private static Truth In(TestCondition condition, Stretch stretch, Knowledge knowledge, Moment moment) => Kleene.SameForAll(
        EitherWayReference.Choices(EitherWayReference.MayBeHers(condition.Test, stretch, knowledge, moment)).Select(some => Own(condition, stretch, knowledge, moment, some)));

    private static Truth Own(TestCondition condition, Stretch stretch, Knowledge knowledge, Moment moment, IEnumerable<Happening> ofGroups)
    {
        var latest = SampleReference.In(condition.Test, stretch, knowledge, moment, ofGroups).Latest();
        var truth = Kleene.SameForAll(latest.Select(sample => sample.ResultNotKnown ? Truth.Unknown : Kleene.Of(condition.Answers.Contains(sample.Answer))));
        return condition.IsNot ? Kleene.Not(truth) : truth;
    }
}
