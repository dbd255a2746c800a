using Byrelaw.Language.Reasoning;

namespace Byrelaw.Workshop.Tuning;

/// <summary>A rule as it would be with another number. A safety rule asks what it asked besides, as a change of it would: trying never loosens one.</summary>
internal static class TriedRule
{
    /// <summary>With another demand of its own.</summary>
    public static Rule Asking(Rule rule, Condition stated, Rulebook rulebook) => rule.IsSafety ? Held(rule, stated, rulebook) : rule.Asking(stated);

    /// <summary>A safety rule of which defines are about to be moved.</summary>
    public static Rule Moved(Rule rule, HashSet<int> moved, Rulebook rulebook)
    {
        var isFor = rule.AppliesTo is { } named && moved.Contains(named.Index);
        if (!isFor)
        {
            return MovedBy.Speaks(rule.Needs, moved) ? Held(rule, rule.Stated, rulebook) : rule;
        }

        // For whom it is does not move either.
        var held = Held(rule, rule.Stated, rulebook);
        var notFor = new ListCondition(ListKind.NoneOf, 0, [Spelled(rule.AppliesTo!, rulebook)]) { Span = rule.Span };
        return held with { Audience = Audience.Everyone, AppliesTo = null, Needs = new ListCondition(ListKind.AnyOf, 0, [notFor, held.Needs]) { Span = rule.Span }, Besides = null };
    }

    /// <summary>Whether whoever meets a rule as it is is proved to meet it with other defines.</summary>
    public static bool AsksNoMore(Rule rule, Rulebook rulebook, Rulebook moved)
    {
        var maker = new FormulaMaker(rulebook, isShared: true, isSure: true);
        var applies = RuleFormulas.Of(rule, maker).Applies;
        return !new Search(maker.Quantities, isShared: true).CanBe(
            (applies, true), (maker.Make(Spelled(rule.Needs, rulebook)), true), (maker.Make(Spelled(rule.Stated, moved)), false));
    }

    private static Rule Held(Rule rule, Condition stated, Rulebook rulebook)
    {
        var before = Spelled(rule.Besides is { IsTried: true } tried ? tried.Before : rule.Needs, rulebook);
        return rule with { Needs = AskedBesides.Together(before, stated), Besides = new AskedBesides(before, stated) { IsTried = true } };
    }

    /// <summary>A condition with what its names stand for in their place, so that it stays what it is when they are moved.</summary>
    private static Condition Spelled(Condition condition, Rulebook rulebook) => condition switch
    {
        NamedCondition { Index: >= 0 } named when Spelled(rulebook.Defines[named.Index].Condition, rulebook) is var meant =>
            named.Not ? new ListCondition(ListKind.NoneOf, 0, [meant]) { Span = named.Span } : meant,
        ListCondition list => list with { Items = [.. list.Items.Select(item => Spelled(item, rulebook))] },
        _ => condition,
    };
}
