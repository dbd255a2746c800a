namespace Byrelaw.Judging.Tests.Reference;

/// <summary>Strong Kleene logic, written out as its tables.</summary>
/// <remarks>"Conditions are true, false or not known (strong Kleene logic)."</remarks>
public static class Kleene
{
    public static Truth Not(Truth a) => a switch
    {
        Truth.True => Truth.False,
        Truth.False => Truth.True,
        _ => Truth.Unknown,
    };

    public static Truth And(Truth a, Truth b) => (a, b) switch
    {
        (Truth.False, _) or (_, Truth.False) => Truth.False,
        (Truth.True, Truth.True) => Truth.True,
        _ => Truth.Unknown,
    };

    public static Truth Or(Truth a, Truth b) => (a, b) switch
    {
        (Truth.True, _) or (_, Truth.True) => Truth.True,
        (Truth.False, Truth.False) => Truth.False,
        _ => Truth.Unknown,
    };

    public static Truth All(IEnumerable<Truth> truths) => truths.Aggregate(Truth.True, And);

    public static Truth Any(IEnumerable<Truth> truths) => truths.Aggregate(Truth.False, Or);

    public static Truth Of(bool known) => known ? Truth.True : Truth.False;

    /// <summary>"True if true for all, false if false for all, else not known." Nothing at all: not known.</summary>
    public static Truth SameForAll(IEnumerable<Truth> truths)
    {
        Truth? same = null;
        foreach (var truth in truths)
        {
            if (truth == Truth.Unknown || (same is not null && same != truth))
            {
                return Truth.Unknown;
            }

            same = truth;
        }

        return same ?? Truth.Unknown;
    }
}
