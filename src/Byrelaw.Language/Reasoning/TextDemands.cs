namespace Byrelaw.Language.Reasoning;

/// <summary>Whether demands on the texts about one animal can be met together.</summary>
internal sealed class TextDemands(Quantities quantities)
{
    /// <summary>How many demands were looked at, for all questions.</summary>
    public long Steps { get; private set; }

    /// <summary>The demands on one text, of those spoken of from a place on, where no value meets them all; null where some value always does.</summary>
    public List<OneOf>? Contradiction(List<OneOf> demands, int from)
    {
        Steps += demands.Count;
        var spokenOf = new HashSet<int>();
        for (var i = from; i < demands.Count; i++)
        {
            spokenOf.Add(demands[i].Text);
        }

        foreach (var ofOne in demands.Where(demand => spokenOf.Contains(demand.Text)).GroupBy(demand => demand.Text))
        {
            if (!IsPossible(ofOne, quantities.DomainOf(ofOne.Key)))
            {
                return [.. ofOne];
            }
        }

        return null;
    }

    /// <summary>Whether some value meets all demands. Of an open text one must be asked for before any can be missing.</summary>
    private static bool IsPossible(IEnumerable<OneOf> demands, IReadOnlyList<string>? domain)
    {
        HashSet<string>? left = domain is null ? null : [.. domain];
        var mustNotBe = new HashSet<string>();
        foreach (var demand in demands)
        {
            if (demand.IsNot)
            {
                mustNotBe.UnionWith(demand.Values);
            }
            else if (left is null)
            {
                left = [.. demand.Values];
            }
            else
            {
                left.IntersectWith(demand.Values);
            }
        }

        return left is null || left.Any(value => !mustNotBe.Contains(value));
    }
}
