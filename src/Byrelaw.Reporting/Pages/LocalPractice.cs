namespace Byrelaw.Reporting.Pages;

/// <summary>What this farm does differently from the rules it starts from: changed, its own, dropped, waived.</summary>
public static class LocalPractice
{
    /// <summary>The part of the list's page.</summary>
    public static Part Of(ListReport list)
    {
        var items = ItemsOf(list.Rulebook, list.Name);
        var part = new DocumentBuilder().Heading(2, "What this farm does differently");
        return (items.Count == 0 ? part.Sentence("Nothing: the rules stand as they are in the files used.") : part.Bullets(items)).As("local");
    }

    /// <summary>What is done differently for one list, an item each.</summary>
    public static IReadOnlyList<Wording> ItemsOf(Rulebook rulebook, string list)
    {
        ArgumentNullException.ThrowIfNull(rulebook);
        var rules = rulebook.Rules.Where(rule => rule.List == list).ToList();
        return
        [
            .. rules.Where(rule => rule.Before is not null).Select(Changed),
            .. rulebook.Prefers.Where(prefer => prefer.List == list && prefer.Before is not null).Select(Changed),
            .. rulebook.Prefers.Where(prefer => prefer.List == list && prefer.Before is null && (prefer.Basis == Basis.Local || prefer.Agreement is not null))
                .Select(prefer => Said(prefer.Basis == Basis.Local ? "Own preference" : "Added preference", prefer.Name, $"{ConditionWords.Of(prefer.Condition)}, {Numbers.Of(prefer.Counts)} {(prefer.Counts == 1 ? "point" : "points")} ({ChangeHistory.Place(prefer.Span)})", prefer.Because, prefer.Agreement)),
            .. rules.Where(rule => rule is { Before: null } && (rule.Basis == Basis.Local || rule.Agreement is not null))
                .Select(rule => Said($"{(rule.Basis == Basis.Local ? "Own" : "Added")} {(rule.IsSafety ? "safety rule" : "rule")}", rule.Name, $"{ConditionWords.Of(rule.Shown)} ({ChangeHistory.Place(rule.Span)})", rule.Because, rule.Agreement)),
            .. rulebook.Drops.Where(drop => drop.Rule.List == list)
                .Select(drop => Said("Dropped", drop.Rule.Name, $"asked for {ConditionWords.Of(drop.Rule.Shown)} ({ChangeHistory.Place(drop.Span)}; first written: {ChangeHistory.Place(First(drop.Rule).Span)})", drop.Because, drop.Agreement)),
            .. rulebook.Waivers.Where(waiver => rules.Any(rule => rule.Name == waiver.Rule))
                .Select(waiver => Said("Waived", $"{waiver.Rule} for {waiver.Animal}", $"until {Dates.Long(waiver.Until)} ({ChangeHistory.Place(waiver.Span)})", waiver.Because, waiver.Agreement)),
        ];
    }

    private static Rule First(Rule rule) => rule.Before is { } before ? First(before) : rule;

    /// <summary>Who agreed and when: <c>Agreed by herd vet on 14 June 2026.</c></summary>
    public static string Agreed(Agreement? agreement) =>
        agreement is null ? "" : $"Agreed by {Phrases.And(agreement.By)} on {Dates.Long(agreement.On)}.";

    /// <summary>What a version of a rule says, where it differs from another one.</summary>
    public static string Was(Rule now, Rule before)
    {
        var parts = new List<string>();
        var (is_, was) = (ConditionWords.Of(now.Shown), ConditionWords.Of(before.Shown));
        if (Added(now, before) is { } besides)
        {
            parts.Add($"asked here besides: “{ConditionWords.Of(besides)}”; asked before: “{was}”");
        }
        else if (is_ != was)
        {
            parts.Add($"“{is_}” was “{was}”");
        }

        if (RuleWords.Audience(now) is var for_ && for_ != RuleWords.Audience(before))
        {
            parts.Add($"{Everyone(for_)} was {Everyone(RuleWords.Audience(before))}");
        }

        if (now.IfNotKnown != before.IfNotKnown)
        {
            parts.Add($"if not known {Word(now.IfNotKnown)} was {Word(before.IfNotKnown)}");
        }

        return parts.Count == 0 ? "the same demand, with another reason" : string.Join("; ", parts);
    }

    /// <summary>What a version of a safety rule asks besides what was asked before; null where nothing is, or it is proved to ask all of that.</summary>
    public static Condition? Added(Rule now, Rule before)
    {
        ArgumentNullException.ThrowIfNull(now);
        ArgumentNullException.ThrowIfNull(before);
        return now.Besides is { IsStricter: false } besides && !ReferenceEquals(besides, before.Besides) ? besides.Here : null;
    }

    private static Wording Changed(Rule rule)
    {
        var latest = Said("Changed", rule.Name, $"{Was(rule, rule.Before!)} {ChangeHistory.Places(rule)}".TrimEnd(), rule.Because, rule.Agreement);
        return Wording.Join(" ", ChangeHistory.Earlier(rule).Select(earlier => (Wording)earlier).Prepend(latest));
    }

    private static Wording Changed(Prefer prefer)
    {
        var (now, before) = (ConditionWords.Of(prefer.Condition), ConditionWords.Of(prefer.Before!.Condition));
        var what = now == before ? $"{Numbers.Of(prefer.Counts)} points were {Numbers.Of(prefer.Before.Counts)}" : $"“{now}” was “{before}”";
        return Said("Changed", prefer.Name, what, prefer.Because, prefer.Agreement);
    }

    /// <summary>One item: what is done, to what, what it says and where, why, and who agreed.</summary>
    internal static Wording Said(string how, string name, string what, string? because, Agreement? agreement, bool byNobody = true)
    {
        var rest = string.Join(' ', new[] { $"{what}.", because, agreement is null && byNobody ? "Agreed by nobody." : Agreed(agreement) }.Where(text => !string.IsNullOrEmpty(text)));
        return $"{Wording.Bold($"{how}: {name}.")} {Phrases.Sentence(rest)}";
    }

    private static string Everyone(string audience) => audience.Length == 0 ? "for all" : audience;

    private static string Word(IfNotKnown answer) => answer switch { IfNotKnown.Pass => "pass", IfNotKnown.Exclude => "exclude", _ => "ask" };
}
