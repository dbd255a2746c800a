namespace Byrelaw.Language.Rulebooks.Conditions;

/// <summary>The windows of a condition, whatever its form.</summary>
public static class ConditionWindows
{
    /// <summary>Its own, not those of the parts of a list; none for a form without windows.</summary>
    public static ImmutableArray<Window> Of(Condition condition) => condition switch
    {
        CountCondition count => count.Windows,
        MeasuredCondition measured => measured.Windows,
        TestCondition test => test.Windows,
        MobMeasuredCondition mob => mob.Windows,
        MobCountCondition mob => mob.Windows,
        SpellCondition spell => spell.Windows,
        _ => [],
    };
}
