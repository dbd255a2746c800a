namespace Byrelaw.Language.Binding.Rules;

/// <summary>Binds the condition of a block: one line, or a list with a line for each item.</summary>
internal static class ConditionLines
{
    /// <summary>The block's condition; null where it has none. Further condition lines are read for problems only.</summary>
    public static Condition? Condition(this Context context, Block block)
    {
        Condition? first = null;
        for (var i = 0; i < block.Lines.Count; i++)
        {
            var condition = block.Lines[i] switch
            {
                NeedsLine needs => context.Line(block, needs.Condition, i),
                SuitsLine suits => context.Line(block, suits.Condition, i),
                ConditionLine line => context.Line(block, line.Condition, i),
                _ => null,
            };
            first ??= condition;
        }

        return first;
    }

    /// <summary>Binds every line of a block that stands for nothing, to tell their problems.</summary>
    public static void TellProblems(this Context context, Block block)
    {
        if (block.First<AppliesToLine>() is { } line)
        {
            Stated.Audience(context, line);
        }

        context.Condition(block);
        for (var i = 0; i < block.Lines.Count && block.Lines[i] is BulletLine bullet; i++)
        {
            context.Bind(bullet.Condition);
        }
    }

    private static Condition Line(this Context context, Block block, ConditionSyntax condition, int at) =>
        condition is ListHeadSyntax head ? context.List(block, head, at) : context.Bind(condition);

    private static Condition List(this Context context, Block block, ListHeadSyntax head, int at)
    {
        var items = ImmutableArray.CreateBuilder<Condition>();
        for (var i = at + 1; i < block.Lines.Count && block.Lines[i] is BulletLine bullet; i++)
        {
            items.Add(context.Bind(bullet.Condition));
        }

        var broken = new BrokenCondition { Span = head.Span };
        if (items.Count == 0)
        {
            return block.IsBroken ? broken : context.Fail<Condition>(ConditionProblems.EmptyList(head.Span)) ?? broken;
        }

        if (head.Count is not { } demand)
        {
            return new ListCondition(head.Kind, 0, items.ToImmutable()) { Span = head.Span.To(items[^1].Span) };
        }

        if (demand.Comparison != Comparison.AtLeast || demand.LowUnit is not null)
        {
            return context.Fail<Condition>(ConditionProblems.ListDemand(head.Span)) ?? broken;
        }

        if (context.CountTest(demand) is not { } count)
        {
            return broken;
        }

        return count.Low > items.Count || count.Low == 0
            ? block.IsBroken ? broken : context.Fail<Condition>(ConditionProblems.CountBeyondList(head.Span, items.Count)) ?? broken
            : new ListCondition(ListKind.AtLeastOf, count.Low, items.ToImmutable()) { Span = head.Span.To(items[^1].Span) };
    }
}
