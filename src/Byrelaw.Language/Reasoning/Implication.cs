namespace Byrelaw.Language.Reasoning;

/// <summary>Whether one rule is proved to ask all that another asks.</summary>
internal static class Implication
{
    /// <summary>Whether whoever meets one rule cannot fail the other. A rule that is judged only on the day, or lets pass what is not
    /// known, stands in for none that is stricter.</summary>
    /// <param name="canBe">Whether an animal can be as asked; false only where none can.</param>
    /// <param name="one">The one that may ask more.</param>
    /// <param name="other">The one that may follow from it.</param>
    public static bool Holds(Func<(Formula Formula, bool Holds)[], bool> canBe, RuleFormulas one, RuleFormulas other) =>
        one.Rule.IfNotKnown != IfNotKnown.Pass
        && other.Rule.IfNotKnown != IfNotKnown.Exclude
        && (!one.Rule.OnTheDay || other.Rule.OnTheDay)
        && !canBe([(one.Met, true), (other.Met, false)]);
}
