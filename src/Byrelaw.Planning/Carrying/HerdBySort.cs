namespace Byrelaw.Planning.Carrying;

/// <summary>How many recipients of each sort there are, over all sessions.</summary>
internal sealed class HerdBySort
{
    private readonly Dictionary<Carrier, (int Sure, int ToAsk)> _counts = [];

    /// <summary>Of so many it is not known which they are.</summary>
    public int NotKnown { get; private set; }

    /// <summary>Those of a sort.</summary>
    public (int Sure, int ToAsk) Of(Carrier carrier) => _counts.GetValueOrDefault(carrier);

    /// <summary>Each animal once, by her best standing in any session, as what she is on the transfer days of the first one; donors that are named carry nobody's embryo.</summary>
    public static HerdBySort Of(ImmutableArray<NamedSession> sessions)
    {
        var herd = new HerdBySort();
        var donors = sessions.SelectMany(session => session.Session.NamedDonors).ToHashSet();
        foreach (var animal in sessions[0].Session.Recipients!.Animals.Where(animal => !donors.Contains(animal.Animal)))
        {
            var best = sessions.SelectMany(session => session.Methods).Select(method => method.Animals[animal.Animal].Standing).DefaultIfEmpty(Standing.Out).Max();
            herd.Add(best, SortOf(animal.Sort, sessions[0].Session.Dry.Of(animal.Animal)));
        }

        return herd;
    }

    private static Carrier? SortOf(AnimalSort sort, Truth isDry) => (sort, isDry) switch
    {
        (AnimalSort.Heifer, _) => Carrier.Heifers,
        (AnimalSort.Cow, Truth.True) => Carrier.DryCows,
        (AnimalSort.Cow, Truth.False) => Carrier.Cows,
        _ => null,
    };

    private void Add(Standing standing, Carrier? sort)
    {
        if (standing == Standing.Out)
        {
            return;
        }

        if (sort is not { } known)
        {
            NotKnown++;
            return;
        }

        var (sure, asked) = Of(known);
        _counts[known] = standing == Standing.Sure ? (sure + 1, asked) : (sure, asked + 1);
    }
}
