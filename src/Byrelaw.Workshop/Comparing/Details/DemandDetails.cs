using static Byrelaw.Workshop.Comparing.Details.RuleDetails;

namespace Byrelaw.Workshop.Comparing.Details;

/// <summary>What differs between two demands: which number, which window, which part of a list; else the whole.</summary>
internal static class DemandDetails
{
    public static IEnumerable<Detail> Between(Condition old, Condition @new, Pairs pairs)
    {
        if (Pairs.AsIs.Of(old) == pairs.AsWas.Of(@new))
        {
            return [];
        }

        return (old, @new) switch
        {
            (ListCondition a, ListCondition b) => Lists(a, b, pairs),
            (ListCondition, _) or (_, ListCondition) => [Whole(old, @new)],
            _ => Leaves(old, @new, pairs, null),
        };
    }

    private static List<Detail> Lists(ListCondition old, ListCondition @new, Pairs pairs)
    {
        List<Detail> details = [.. One(Aspect.Together, ConditionText.Head(old), ConditionText.Head(@new))];
        foreach (var pair in Pairing.Of(old.Items, @new.Items, Pairs.AsIs.Of, Pairs.AsIs.Of, pairs.AsWas.Of))
        {
            details.AddRange(pair switch
            {
                { Old: { } a, New: { } b } => Pairs.AsIs.Of(a) == pairs.AsWas.Of(b) ? [] : Leaves(a, b, pairs, Pairs.AsIs.Of(a)),
                { Old: { } gone } => [new Detail(Aspect.Part, Pairs.AsIs.Of(gone), null)],
                _ => [new Detail(Aspect.Part, null, Pairs.AsIs.Of(pair.New!))],
            });
        }

        // The same parts in another order say the same, but print and so fingerprint otherwise.
        return details.Count > 0 ? details : [Whole(old, @new)];
    }

    private static List<Detail> Leaves(Condition old, Condition @new, Pairs pairs, string? part)
    {
        var (was, now, shown) = (Piece.Of(old, Pairs.AsIs), Piece.Of(@new, pairs.AsWas), Piece.Of(@new, Pairs.AsIs));
        var details = new List<Detail>();
        if (was.Count > 0 && was.Count == now.Count && was[0] == now[0])
        {
            for (var i = 1; i < was.Count; i++)
            {
                if (was[i].Text != now[i].Text)
                {
                    details.Add(new Detail(was[i].Aspect, was[i].Text, shown[i].Text, part));
                }
            }
        }

        return details.Count > 0 ? details : [Whole(old, @new)];
    }

    private static Detail Whole(Condition old, Condition @new) => new(Aspect.Demand, Pairs.AsIs.Of(old), Pairs.AsIs.Of(@new));
}
