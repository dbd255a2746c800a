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

    private static Truth In(TestCondition condition, Stretch stretch, Knowledge knowledge, Moment moment)
    {
        var latest = SampleReference.In(condition.Test, stretch, knowledge, moment).Latest();
        var truth = Kleene.SameForAll(latest.Select(sample => sample.ResultNotKnown ? Truth.Unknown : Kleene.Of(condition.Answers.Contains(sample.Answer))));
        return condition.IsNot ? Kleene.Not(truth) : truth;
    }
}
