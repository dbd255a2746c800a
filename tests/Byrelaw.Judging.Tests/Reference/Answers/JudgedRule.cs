namespace Byrelaw.Judging.Tests.Reference;

/// <summary>A rule, a gate or unreadable lines, for one animal over a span, in both ways of looking at the days after the known day.</summary>
public sealed record JudgedRule
{
    public required string Name { get; init; }

    /// <summary>Null for a gate and for lines that could not be read.</summary>
    public Rule? Rule { get; init; }

    public Gate Gate { get; init; }

    public bool IsBroken { get; init; }

    /// <summary>One of the program's own, that lie under every list for a hormone or an embryo.</summary>
    public bool IsOfTheFloor { get; init; }

    /// <summary>"A rule with <c>on the day</c> is shown but judged only on the day": no part of A(d). A broken one is.</summary>
    public bool Counts => Rule is not { OnTheDay: true } || IsBroken;

    public required ByDay<RuleOnADay> Days { get; init; }

    public required ByDay<RuleOnADay> StrictDays { get; init; }

    /// <summary>"A safety rule must hold on the judging days, and on the day that the records reach where one of them is before it": that day.</summary>
    public int? AlsoOn { get; init; }

    /// <summary>What the rule says on each day by itself.</summary>
    public ByDay<RuleOnADay>? Alone { get; init; }

    /// <summary>The answer over days from <paramref name="from"/> to <paramref name="to"/>.</summary>
    public RuleAnswer Answer(int from, int to) => Answer(Days, from, to);

    /// <summary>"An answer is expected if, were coverage to stop at the known day, it would be another." That a rule is met
    /// or does not apply is one answer here: it lets her through.</summary>
    public bool IsExpected(int from, int to) => Truth(Days, from, to) != Truth(StrictDays, from, to);

    /// <summary>It stands between her and Ready.</summary>
    public bool IsInTheWay(int from, int to) => Counts && Answer(from, to) is RuleAnswer.NotMet or RuleAnswer.NotKnown or RuleAnswer.Broken;

    private RuleAnswer Answer(ByDay<RuleOnADay> days, int from, int to)
    {
        if (IsBroken)
        {
            return RuleAnswer.Broken;
        }

        return Truth(days, from, to) switch
        {
            Truths.Truth.False => RuleAnswer.NotMet,
            Truths.Truth.Unknown => RuleAnswer.NotKnown,
            // "shown as *does not apply* only where applicability is false"
            _ => days.Between(from, to).All(day => day.Applies == Truths.Truth.False) ? RuleAnswer.DoesNotApply : RuleAnswer.Met,
        };
    }

    private static Truths.Truth Truth(ByDay<RuleOnADay> days, int from, int to) => Kleene.All(days.Between(from, to).Select(day => day.Truth));
}
