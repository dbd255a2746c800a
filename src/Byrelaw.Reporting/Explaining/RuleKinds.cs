namespace Byrelaw.Reporting.Explaining;

/// <summary>Which kinds of record the rules of a list look at.</summary>
public static class RuleKinds
{
    /// <summary>Every kind, once, in the order of the rules.</summary>
    public static IEnumerable<Kind> Of(Rulebook rulebook, string list) => Conditions(rulebook, list).SelectMany(condition => new ConditionParts(condition).Kinds).Select(kind => kind.Declaration).Distinct();

    /// <summary>Events of which a rule wants none, or at most so many.</summary>
    public static IEnumerable<EventKind> UnwantedBy(Rulebook rulebook, string list) =>
        Conditions(rulebook, list).OfType<CountCondition>()
            .Where(count => count.Test.Comparison is Comparison.AtMost or Comparison.LessThan or Comparison.Exactly && count.Test.Low == 0)
            .SelectMany(count => count.Counted).Select(counted => counted.Kind.Declaration).OfType<EventKind>().Distinct();

    private static IEnumerable<Condition> Conditions(Rulebook rulebook, string list) =>
        rulebook.Rules.Where(rule => rule.IsFor(list)).SelectMany(rule => rule.Needs.Leaves(rulebook));
}
