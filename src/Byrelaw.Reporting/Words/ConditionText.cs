using System.Runtime.CompilerServices;

namespace Byrelaw.Reporting.Words;

/// <summary>Conditions in the words of the rule file.</summary>
public static class ConditionText
{
    /// <summary>A rule's condition stands on every animal's page: it is printed once.</summary>
    private static readonly ConditionalWeakTable<Condition, string> Printed = [];

    /// <summary>A condition on one line.</summary>
    public static string Of(Condition condition) =>
        condition is BrokenCondition ? "could not be read" : Printed.GetValue(condition, CanonicalText.Of);

    /// <summary>The defined names that a condition speaks in, each with what it stands for, in the order of use.</summary>
    public static IReadOnlyList<Define> DefinesOf(Condition condition, Rulebook rulebook)
    {
        var found = new List<Define>();
        Collect(condition, rulebook, found);
        return found;
    }

    private static void Collect(Condition condition, Rulebook rulebook, List<Define> found)
    {
        switch (condition)
        {
            case ListCondition list:
                foreach (var item in list.Items)
                {
                    Collect(item, rulebook, found);
                }

                break;
            case NamedCondition named when named.Index >= 0 && named.Index < rulebook.Defines.Length:
                var define = rulebook.Defines[named.Index];
                if (!found.Contains(define))
                {
                    found.Add(define);
                    Collect(define.Condition, rulebook, found);
                }

                break;
        }
    }
}
