namespace Byrelaw.Judging.Tests.Reference;

/// <summary>"A broken bullet breaks its list, a broken define its users, a broken <c>change</c> its target."</summary>
public static class Broken
{
    public static bool Is(Rule rule, Rulebook rulebook) =>
        rule.IsBroken || Is(rule.Needs, rulebook) || (rule.AppliesTo is { } named && Is(named, rulebook));

    public static bool Is(Condition condition, Rulebook rulebook) => condition switch
    {
        BrokenCondition => true,
        ListCondition list => list.Items.Any(item => Is(item, rulebook)),
        NamedCondition named => rulebook.Defines[named.Index] is var define && (define.IsBroken || Is(define.Condition, rulebook)),
        _ => false,
    };
}
