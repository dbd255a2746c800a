namespace Byrelaw.Language.Rulebooks.Conditions;

/// <summary>Mobs that a rulebook names.</summary>
public static class NamedMobs
{
    /// <summary>Each, with the condition that it stands in, as written in rules, preferences and defines.</summary>
    public static IEnumerable<(string Name, SourceSpan Span)> Mobs(this Rulebook rulebook)
    {
        ArgumentNullException.ThrowIfNull(rulebook);
        return rulebook.Rules.Select(rule => rule.Needs).Concat(rulebook.Prefers.Select(prefer => prefer.Condition)).Concat(rulebook.Defines.Select(define => define.Condition))
            .SelectMany(ConditionWalk.Written).OfType<InMobCondition>().SelectMany(condition => condition.Mobs.Select(mob => (mob, condition.Span)));
    }
}
