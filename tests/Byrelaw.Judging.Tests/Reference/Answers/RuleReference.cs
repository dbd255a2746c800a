namespace Byrelaw.Judging.Tests.Reference;

/// <summary>What a rule says on one day.</summary>
/// <param name="Truth">After waivers and <c>if not known</c>.</param>
/// <param name="Applies">Whether she is one the rule is for.</param>
/// <param name="Replaced">What stood in for a not known.</param>
/// <param name="Waiver">The waiver that makes it true.</param>
public sealed record RuleOnADay(Truth Truth, Truth Applies, IfNotKnown Replaced = IfNotKnown.Ask, Waiver? Waiver = null);

/// <summary>One rule for one animal on one day.</summary>
public static class RuleReference
{
    public static RuleOnADay On(Rule rule, Knowledge knowledge, Moment moment)
    {
        // "While a list has a broken rule nobody on it is Ready": whatever it may have said, and for whom.
        if (Broken.Is(rule, knowledge.Rulebook))
        {
            return new RuleOnADay(Truth.Unknown, Truth.True);
        }

        var applies = Applies(rule, knowledge, moment);
        // "A waiver makes the rule true from the agreed day to `until`, both inclusive and required." "A `safety rule` cannot be dropped, waived or passed."
        if (!rule.IsSafety && WaiverOn(rule, knowledge, moment) is { } waiver)
        {
            return new RuleOnADay(Truth.True, applies, Waiver: waiver);
        }

        // "The rule's answer is '(does not apply) or needs' in Kleene logic."
        var truth = Kleene.Or(Kleene.Not(applies), ConditionReference.At(rule.Needs, knowledge, moment));
        if (truth != Truth.Unknown)
        {
            return new RuleOnADay(truth, applies);
        }

        // "`if not known ask` is the default; `pass` and `exclude` replace a not known at each date, after the rule's lists are evaluated."
        return rule.IfNotKnown switch
        {
            IfNotKnown.Exclude => new RuleOnADay(Truth.False, applies, IfNotKnown.Exclude),
            IfNotKnown.Pass when MayPass(rule, knowledge, moment) => new RuleOnADay(Truth.True, applies, IfNotKnown.Pass),
            _ => new RuleOnADay(truth, applies),
        };
    }

    public static Truth Applies(Rule rule, Knowledge knowledge, Moment moment) => rule.Audience switch
    {
        Audience.Everyone => Truth.True,
        Audience.Females => SortReference.Female(knowledge, moment),
        Audience.Cows => SortReference.Cow(knowledge, moment),
        Audience.Heifers => SortReference.Heifer(knowledge, moment),
        Audience.Named => ConditionReference.At(rule.AppliesTo!, knowledge, moment),
        _ => throw new ArgumentOutOfRangeException(nameof(rule)),
    };

    /// <summary>Whether a sample exists does not hang on how far coverage reaches, so one that bars a pass bars it both ways.</summary>
    private static bool MayPass(Rule rule, Knowledge knowledge, Moment moment) =>
        !rule.IsSafety && !IsBarred(rule, knowledge, moment) && !(moment.Strict && IsBarred(rule, knowledge, moment with { Strict = false }));

    private static bool IsBarred(Rule rule, Knowledge knowledge, Moment moment) =>
        ResultNotKnown.StandsIn(rule.Needs, knowledge, moment)
        || (rule.Audience is Audience.Cows or Audience.Heifers or Audience.Females && Applies(rule, knowledge, moment) == Truth.Unknown
            && new Barred(knowledge, moment.Animal, moment.Day).OfSort())
        || (rule.AppliesTo is { } named && ResultNotKnown.StandsIn(named, knowledge, moment));

    private static Waiver? WaiverOn(Rule rule, Knowledge knowledge, Moment moment) =>
        knowledge.Rulebook.Waivers.FirstOrDefault(waiver =>
            waiver.Rule == rule.Name
            && waiver.Animal == knowledge.Farm.Animals[moment.Animal].Number
            && moment.Day >= DayNumber.Of(waiver.Agreement.On)
            && moment.Day <= DayNumber.Of(waiver.Until));
}
