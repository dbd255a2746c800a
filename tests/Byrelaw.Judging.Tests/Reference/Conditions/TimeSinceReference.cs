namespace Byrelaw.Judging.Tests.Reference;

/// <summary>Time since the latest of some kinds.</summary>
public static class TimeSinceReference
{
    public static Truth At(TimeSinceCondition condition, Knowledge knowledge, Moment moment)
    {
        var last = knowledge.Anchors.Last(condition.Kinds, moment.Animal, moment.Day, moment.Strict);
        if (last.Never)
        {
            // "Never happened: ... `at least / more than N since last X` is true, other times since are false."
            return Kleene.Of(condition.Test.Comparison is Comparison.AtLeast or Comparison.MoreThan);
        }

        return last.IsNotKnown
            ? Truth.Unknown
            : Kleene.SameForAll(last.Days.Select(day => Kleene.Of(Comparing.Elapsed(condition.Test, day, moment.Day))));
    }
}
