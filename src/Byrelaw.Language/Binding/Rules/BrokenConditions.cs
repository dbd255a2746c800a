namespace Byrelaw.Language.Binding.Rules;

/// <summary>Finds what breaks a condition: a part that could not be read, or a broken define.</summary>
internal static class BrokenConditions
{
    /// <summary>Whether a condition is broken.</summary>
    /// <param name="condition">Any condition.</param>
    /// <param name="defines">In the rulebook's order.</param>
    public static bool IsBroken(Condition condition, IReadOnlyList<DefineEntry> defines) =>
        condition.Written().Any(one => one is BrokenCondition || (one is NamedCondition named && (named.Index < 0 || defines[named.Index].IsBroken)));
}
