namespace Byrelaw.Workshop.Comparing.Details;

/// <summary>What differs between two versions of a rule or preference.</summary>
internal static class RuleDetails
{
    public static IEnumerable<Detail> Between(RuleInForce old, RuleInForce @new, Pairs pairs)
    {
        var (a, b) = (old.Rule, @new.Rule);
        List<Detail> details =
        [
            .. One(Aspect.List, a.List, b.List),
            .. DemandDetails.Between(a.Shown, b.Shown, pairs),
            .. One(Aspect.Audience, Audience(a, Pairs.AsIs), Audience(b, pairs.AsWas), Audience(b, Pairs.AsIs)),
            .. One(Aspect.IfNotKnown, Word(a.IfNotKnown), Word(b.IfNotKnown)),
            .. One(Aspect.OnTheDay, OnTheDay(a), OnTheDay(b)),
            .. One(Aspect.Safety, a.IsSafety ? "safety rule" : "rule", b.IsSafety ? "safety rule" : "rule"),
            .. Readable(a.IsBroken, b.IsBroken),
            .. Reasons(a.Because, b.Because, a.Source, b.Source, a.Agreement, b.Agreement),
            .. Dropped(old.Drop, @new.Drop),
        ];
        return details.Count > 0 ? details : One(Aspect.History, History(a.Before, Pairs.AsIs), History(b.Before, pairs.AsWas));
    }

    public static IEnumerable<Detail> Between(Prefer old, Prefer @new, Pairs pairs)
    {
        List<Detail> details =
        [
            .. One(Aspect.List, old.List, @new.List),
            .. DemandDetails.Between(old.Condition, @new.Condition, pairs),
            .. One(Aspect.Points, NumberText.Of(old.Counts), NumberText.Of(@new.Counts)),
            .. Readable(old.IsBroken, @new.IsBroken),
            .. Reasons(old.Because, @new.Because, old.Source, @new.Source, old.Agreement, @new.Agreement),
        ];
        return details.Count > 0 ? details : One(Aspect.History, History(old.Before, Pairs.AsIs), History(@new.Before, pairs.AsWas));
    }

    /// <summary>Whether a block that could be read no longer can, or the other way round.</summary>
    public static IEnumerable<Detail> Readable(bool wasBroken, bool isBroken) =>
        One(Aspect.Readable, wasBroken ? "could not be read" : "readable", isBroken ? "cannot be read" : "readable");

    /// <summary>Who agreed and when, as rule files say it.</summary>
    public static string? Agreed(Agreement? agreement) =>
        agreement is null ? null : $"{string.Join(", ", agreement.By)} on {NumberText.Of(agreement.On)}";

    /// <summary>The one detail, if the two differ.</summary>
    /// <param name="aspect">What is compared.</param>
    /// <param name="was">As it was.</param>
    /// <param name="is">As it is, in the old one's names.</param>
    /// <param name="shown">As it is, in its own.</param>
    public static IEnumerable<Detail> One(Aspect aspect, string? was, string? @is, string? shown = null) =>
        was == @is ? [] : [new Detail(aspect, was, shown ?? @is)];

    private static IEnumerable<Detail> Reasons(string? oldBecause, string? because, string? oldSource, string? source, Agreement? oldAgreement, Agreement? agreement) =>
    [
        .. One(Aspect.Because, oldBecause, because),
        .. One(Aspect.Source, oldSource, source),
        .. One(Aspect.Agreement, Agreed(oldAgreement), Agreed(agreement)),
    ];

    private static IEnumerable<Detail> Dropped(Drop? old, Drop? @new) => old is null || @new is null ? [] :
    [
        .. One(Aspect.Because, old.Because, @new.Because),
        .. One(Aspect.Agreement, Agreed(old.Agreement), Agreed(@new.Agreement)),
    ];

    /// <summary>The versions before, the latest first, a line each.</summary>
    private static string History(Rule? version, ConditionText text) => version is null ? ""
        : $"{text.Of(version.Needs)}; {Audience(version, text)}; {Word(version.IfNotKnown)}; {OnTheDay(version)}; {version.Because}; {version.Source}; {Agreed(version.Agreement)}\n"
            + History(version.Before, text);

    private static string History(Prefer? version, ConditionText text) => version is null ? ""
        : $"{text.Of(version.Condition)}; {NumberText.Of(version.Counts)}; {version.Because}; {version.Source}; {Agreed(version.Agreement)}\n" + History(version.Before, text);

    private static string Audience(Rule rule, ConditionText text) => rule.Audience switch
    {
        Language.Rulebooks.Audience.Everyone => "all",
        Language.Rulebooks.Audience.Named => text.Of(rule.AppliesTo!),
        var audience => audience.ToString().ToLowerInvariant(),
    };

    private static string Word(IfNotKnown answer) => answer.ToString().ToLowerInvariant();

    private static string OnTheDay(Rule rule) => rule.OnTheDay ? "on the day" : "beforehand";
}
