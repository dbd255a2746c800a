namespace Byrelaw.Checking.Coverage;

/// <summary>The conditions that a rule comes down to, through lists and defined names, each once.</summary>
internal static class Leaves
{
    /// <summary>Of a condition.</summary>
    public static List<Condition> Of(Condition condition, Rulebook rulebook)
    {
        var leaves = new List<Condition>();
        var entered = new HashSet<int>();
        Add(condition);
        return leaves;

        // Recursion is bounded: lists are one level deep and defines stand in no circle.
        void Add(Condition one)
        {
            switch (one)
            {
                case ListCondition list:
                    foreach (var item in list.Items)
                    {
                        Add(item);
                    }

                    break;
                case NamedCondition named:
                    if (entered.Add(named.Index))
                    {
                        Add(rulebook.Defines[named.Index].Condition);
                    }

                    break;
                case BrokenCondition:
                    break;
                default:
                    leaves.Add(one);
                    break;
            }
        }
    }

    /// <summary>Where a condition stands, which tells it from every other, in whatever rulebook it is read.</summary>
    public static (string File, int Start) Place(Condition condition) => (condition.Span.File.Path, condition.Span.Start);
}
