namespace Byrelaw.Language.Reasoning.Claims;

/// <summary>Ages, and times since the latest of some kinds.</summary>
internal sealed class TimeClaims(Happenings happenings)
{
    public Claim Of(AgeCondition condition, bool isTrue)
    {
        var (least, most) = TimeStretch.Of(condition.Test);
        var age = happenings.Age;
        if (isTrue)
        {
            var old = least is { } low ? Claim.Of(Bound.Above(age, low, condition)) : Claim.Anything;
            return most is { } high ? old.And(Claim.Of(Bound.Below(age, high, condition))) : old;
        }

        var young = least is { } early ? Claim.Of(Bound.Below(age, early.Plus(-1), condition)) : Claim.Never;
        return most is { } late ? young.Or(Claim.Of(Bound.Above(age, late.Plus(1), condition))) : young;
    }

    /// <summary>"Never" is a very long time ago: it is at least and more than any other time.</summary>
    public Claim Of(TimeSinceCondition condition, bool isTrue)
    {
        var kinds = condition.Kinds.Select(kind => happenings.Of(kind)).ToList();
        var (least, most) = TimeStretch.Of(condition.Test);
        if (isTrue)
        {
            var allAfter = least is { } low ? AllAtLeast(low) : Claim.Anything;
            return most is { } high ? allAfter.And(OneAtMost(high)) : allAfter;
        }

        var tooSoon = least is { } early ? OneAtMost(early.Plus(-1)) : Claim.Never;
        return most is { } late ? tooSoon.Or(AllAtLeast(late.Plus(1))) : tooSoon;

        Claim AllAtLeast(DaysLong time) => Claim.Of([.. kinds.Select(kind => Bound.Above(kind.Ago, time, condition))]);

        Claim OneAtMost(DaysLong time) => Claim.Any(kinds.Select(kind => new Claim(
            [happenings.Happened(kind, condition).And(Together.Of(Bound.Below(kind.Ago, time, condition)))])));
    }
}
