namespace Byrelaw.Workshop.Tuning;

/// <summary>A number that a rule hangs on, and where it stands.</summary>
/// <param name="Rule">The rule, in force.</param>
/// <param name="Through">The defined names it is reached through, outermost first; empty for a number of the rule itself.</param>
/// <param name="Define">The place in <see cref="Rulebook.Defines"/> of the define it stands in; null for one in the rule itself.</param>
/// <param name="Item">The bullet it stands in, from 0; null where its condition is no bullet of a list.</param>
/// <param name="Condition">What it is a number of: a condition that is no list, or the list whose count it is.</param>
/// <param name="Number">The number.</param>
public sealed record RuleNumber(Rule Rule, ImmutableArray<string> Through, int? Define, int? Item, Condition Condition, ConditionNumber Number)
{
    /// <summary>The same place, whatever stands there: two numbers with one key are the same number.</summary>
    public (int? Define, string? Rule, int? Item, NumberPart Part, bool IsHigh) Key =>
        (Define, Define is null ? Rule.Name : null, Item, Number.Part, Number.IsHigh);
}
