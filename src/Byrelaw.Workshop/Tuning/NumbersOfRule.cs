namespace Byrelaw.Workshop.Tuning;

/// <summary>Finds the numbers that a rule hangs on, and puts others in their place.</summary>
public static class NumbersOfRule
{
    /// <summary>Its own numbers in the order they are read, then those of the defines it speaks of (also for whom it is for), each once.</summary>
    /// <param name="rulebook">The rulebook.</param>
    /// <param name="rule">One of its rules.</param>
    public static ImmutableArray<RuleNumber> Of(Rulebook rulebook, Rule rule)
    {
        ArgumentNullException.ThrowIfNull(rulebook);
        ArgumentNullException.ThrowIfNull(rule);
        var found = new List<RuleNumber>();
        var seen = new HashSet<int>();
        Walk(rule.Stated, [], null);
        if (rule.AppliesTo is { } named)
        {
            Walk(named, [], null);
        }

        // The rule's own numbers before those of its defines.
        return [.. found.OrderBy(number => number.Define is not null)];

        void Walk(Condition condition, ImmutableArray<string> through, int? define)
        {
            Take(condition, through, define, null);
            for (var item = 0; item < condition.Items.Length; item++)
            {
                Take(condition.Items[item], through, define, item);
            }
        }

        void Take(Condition condition, ImmutableArray<string> through, int? define, int? item)
        {
            found.AddRange(new ConditionParts(condition).Numbers.Select(number => new RuleNumber(rule, through, define, item, condition, number)));
            if (condition is NamedCondition name && seen.Add(name.Index))
            {
                Walk(rulebook.Defines[name.Index].Condition, through.Add(name.Define), name.Index);
            }
        }
    }

    /// <summary>The rulebook with another value in a number's place, whatever stands there now. Safety rules go on asking what they ask: no number loosens one.</summary>
    /// <param name="rulebook">The one the number was found in, or one made from it by this method.</param>
    /// <param name="number">Which number.</param>
    /// <param name="value">In the number's unit; whole for times and counts.</param>
    public static Rulebook With(this Rulebook rulebook, RuleNumber number, decimal value)
    {
        ArgumentNullException.ThrowIfNull(rulebook);
        ArgumentNullException.ThrowIfNull(number);
        if (number.Define is { } index)
        {
            var define = rulebook.Defines[index];
            var moved = MovedBy.Defines(rulebook, index);
            return rulebook with
            {
                Defines = rulebook.Defines.SetItem(index, define with { Condition = With(define.Condition, number, value) }),
                Rules = [.. rulebook.Rules.Select(rule => rule.IsSafety ? TriedRule.Moved(rule, moved, rulebook) : rule)],
            };
        }

        return rulebook with
        {
            Rules = [.. rulebook.Rules.Select(rule => rule.Name != number.Rule.Name ? rule : TriedRule.Asking(rule, With(rule.Stated, number, value), rulebook))],
        };
    }

    /// <summary>A condition with another value in a number's place; the condition is of the same shape as the one it was found in.</summary>
    internal static Condition With(Condition condition, RuleNumber number, decimal value) =>
        number.Item is { } item
            ? condition with { Items = condition.Items.SetItem(item, OtherNumber.In(condition.Items[item], number.Number.Part, number.Number.IsHigh, (double)value)) }
            : OtherNumber.In(condition, number.Number.Part, number.Number.IsHigh, (double)value);
}
