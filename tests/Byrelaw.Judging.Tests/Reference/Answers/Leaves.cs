namespace Byrelaw.Judging.Tests.Reference;

/// <summary>A condition that is neither a list nor a defined name, as met on the way through a rule.</summary>
/// <param name="Condition">The condition.</param>
/// <param name="Through">The defines it was reached through, outermost first.</param>
/// <param name="Truth">Its answer.</param>
/// <param name="Inverted">Asked the other way round.</param>
/// <param name="Decides">Turning it, perhaps with others, turns the whole.</param>
public sealed record Leaf(Condition Condition, ImmutableArray<string> Through, Truth Truth, bool Inverted, bool Decides);

/// <summary>Takes a condition apart.</summary>
public static class Leaves
{
    public static IEnumerable<Leaf> Of(Condition condition, Knowledge knowledge, Moment moment) => Of(condition, knowledge, moment, [], false, true);

    private static IEnumerable<Leaf> Of(
        Condition condition, Knowledge knowledge, Moment moment, ImmutableArray<string> through, bool inverted, bool decides)
    {
        switch (condition)
        {
            case NamedCondition named:
                var define = knowledge.Rulebook.Defines[named.Index];
                return Of(define.Condition, knowledge, moment, through.Add(define.Name), inverted != named.Not, decides);
            case ListCondition list:
                var whole = ListReference.At(list, knowledge, moment);
                return list.Items.SelectMany(item =>
                {
                    var bears = Bears(list.Kind, whole, ConditionReference.At(item, knowledge, moment));
                    return Of(item, knowledge, moment, through, inverted != (list.Kind == ListKind.NoneOf), decides && bears);
                });
            default:
                return [new Leaf(condition, through, ConditionReference.At(condition, knowledge, moment), inverted, decides)];
        }
    }

    /// <summary>Whether turning an item of a list, perhaps with others, turns the list.</summary>
    private static bool Bears(ListKind kind, Truth whole, Truth item) => kind switch
    {
        ListKind.NoneOf => Bears(ListKind.AnyOf, Kleene.Not(whole), item),
        ListKind.AtLeastOf when whole == Truth.False => item != Truth.True,
        _ => item == whole,
    };
}
