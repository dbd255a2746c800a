namespace Byrelaw.Judging.Tests.Reference;

/// <summary>
/// "Parity has a day. Earlier: that number less the calvings between, where covered; else 0 to that number (0 before the age of first
/// calving). Later: plus the calvings since, or more where not covered." Where more calvings are on record by its day: any number from the one to
/// the other; where fewer are, and all are promised: likewise.
/// </summary>
public static class ParityReference
{
    public static Truth At(ParityCondition condition, Knowledge knowledge, Moment moment)
    {
        var (atLeast, atMost) = Between(knowledge, moment);
        return Comparing.Count(condition.Test, (int)atLeast!.Value, (int?)atMost);
    }

    /// <summary>The least and the most that it may be; no most where there may be any number.</summary>
    public static ValueRange Between(Knowledge knowledge, Moment moment)
    {
        var (animal, day) = (knowledge.Farm.Animals[moment.Animal], moment.Day);
        var sure = Calvings.Sure(knowledge, moment.Animal, day);
        if (Calvings.IsTooYoung(knowledge, moment.Animal, day))
        {
            return new ValueRange(sure, sure);
        }

        if (animal.Parity is not { } number || animal.ParityOn is not { } on)
        {
            var isCounted = animal is { Parity: null, ParityUnreadable: false } && Calvings.Covered(knowledge, moment, knowledge.Coverage.Dawn, day);
            return new ValueRange(sure, isCounted ? sure : null);
        }

        var byThen = Calvings.Sure(knowledge, moment.Animal, on);
        var low = knowledge.Coverage.ParityIsDoubted(moment.Animal) ? byThen : number;
        int? high = Calvings.MayBeUnread(knowledge, moment with { Day = on }) ? null : Math.Max(byThen, number);
        if (day == on)
        {
            return new ValueRange(low, high);
        }

        if (day > on)
        {
            return new ValueRange(low + sure - byThen, Calvings.Covered(knowledge, moment, on + 1, day) ? high + sure - byThen : null);
        }

        // Under --known-on, what was written down after that day is not seen, and the parity is of today.
        if (on > knowledge.Farm.Known || !Calvings.Covered(knowledge, moment with { Strict = false }, day + 1, on))
        {
            return new ValueRange(Math.Min(sure, number), high is null ? null : Math.Max(sure, number));
        }

        return new ValueRange(Math.Max(0, low - (byThen - sure)), high is null ? null : Math.Max(0, high.Value - (byThen - sure)));
    }
}
