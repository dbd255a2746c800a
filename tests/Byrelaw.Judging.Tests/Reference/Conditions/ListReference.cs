namespace Byrelaw.Judging.Tests.Reference;

/// <summary>"Lists: <c>any of</c>, <c>all of</c>, <c>none of</c>, <c>at least 2 of</c>."</summary>
public static class ListReference
{
    public static Truth At(ListCondition list, Knowledge knowledge, Moment moment)
    {
        var items = list.Items.Select(item => ConditionReference.At(item, knowledge, moment)).ToList();
        return list.Kind switch
        {
            ListKind.AnyOf => Kleene.Any(items),
            ListKind.AllOf => Kleene.All(items),
            ListKind.NoneOf => Kleene.Not(Kleene.Any(items)),
            _ => items.Count(item => item == Truth.True) >= list.Count ? Truth.True
                : items.Count(item => item != Truth.False) < list.Count ? Truth.False
                : Truth.Unknown,
        };
    }
}
