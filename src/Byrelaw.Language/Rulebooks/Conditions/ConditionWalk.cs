namespace Byrelaw.Language.Rulebooks.Conditions;

/// <summary>Walks through what a condition is made of. Each define is entered once, however often it is named.</summary>
public static class ConditionWalk
{
    /// <summary>The single conditions as written: the items of a list, or the condition itself.</summary>
    public static IEnumerable<Condition> Written(this Condition condition)
    {
        ArgumentNullException.ThrowIfNull(condition);
        return condition.Items.IsEmpty ? [condition] : condition.Items.SelectMany(Written);
    }

    /// <summary>The defined names in it, as written.</summary>
    public static IEnumerable<NamedCondition> Named(this Condition condition) => condition.Written().OfType<NamedCondition>();

    /// <summary>The single conditions it comes down to, through lists and defined names; those that could not be read left out.</summary>
    public static List<Condition> Leaves(this Condition condition, Rulebook rulebook)
    {
        ArgumentNullException.ThrowIfNull(rulebook);
        return condition.Leaves(index => index < rulebook.Defines.Length ? rulebook.Defines[index].Condition : null);
    }

    /// <summary>The same, with the defines in the way of being bound.</summary>
    /// <param name="condition">The condition.</param>
    /// <param name="define">What stands at a define's place; null for nothing that can be entered.</param>
    internal static List<Condition> Leaves(this Condition condition, Func<int, Condition?> define)
    {
        var (leaves, entered) = (new List<Condition>(), new HashSet<int>());
        Enter(condition);
        return leaves;

        // Lists are one level deep, and defines no more than 64.
        void Enter(Condition one)
        {
            foreach (var single in one.Written())
            {
                if (single is NamedCondition named)
                {
                    if (named.Index >= 0 && entered.Add(named.Index) && define(named.Index) is { } meant)
                    {
                        Enter(meant);
                    }
                }
                else if (single is not BrokenCondition)
                {
                    leaves.Add(single);
                }
            }
        }
    }

    /// <summary>The defines that it speaks in, with those that they speak in, in the order of use.</summary>
    public static ImmutableArray<Define> DefinesUsed(this Condition condition, Rulebook rulebook)
    {
        ArgumentNullException.ThrowIfNull(rulebook);
        var found = ImmutableArray.CreateBuilder<Define>();
        condition.Leaves(index =>
        {
            if (index >= rulebook.Defines.Length)
            {
                return null;
            }

            found.Add(rulebook.Defines[index]);
            return rulebook.Defines[index].Condition;
        });
        return found.ToImmutable();
    }
}
