using System.Runtime.CompilerServices;

namespace Byrelaw.Reporting.Words;

/// <summary>Conditions in the words of the rule file.</summary>
public static class ConditionWords
{
    /// <summary>A rule's condition stands on every animal's page: it is printed once.</summary>
    private static readonly ConditionalWeakTable<Condition, string> Printed = [];

    /// <summary>A condition on one line.</summary>
    public static string Of(Condition condition) =>
        condition is BrokenCondition ? "could not be read" : Printed.GetValue(condition, CanonicalText.Of);

    /// <summary>The defined names that a condition speaks in, each with what it stands for, in the order of use.</summary>
    public static IReadOnlyList<Define> DefinesOf(Condition condition, Rulebook rulebook) => condition.DefinesUsed(rulebook);
}
