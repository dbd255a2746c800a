namespace Byrelaw.Planning.Carrying;

/// <summary>How much of the recipients are of which sort, from 0 to 1, and of how much that is not known; together they are 1.</summary>
/// <param name="Cows">Cows in milk.</param>
/// <param name="DryCows">Dry cows.</param>
/// <param name="Heifers">Heifers.</param>
/// <param name="CowsOfAnySort">Cows of whom it is not known whether they are dry.</param>
/// <param name="NotKnown">Of whom it is not known whether they have calved.</param>
public readonly record struct CarrierShares(double Cows, double DryCows, double Heifers, double CowsOfAnySort = 0, double NotKnown = 0)
{
    /// <summary>So much heifers and the rest cows in milk.</summary>
    public static CarrierShares Exactly(double heifers) => new(1 - heifers, 0, heifers);

    /// <summary>All of one sort.</summary>
    public static CarrierShares All(Carrier carrier) => carrier switch
    {
        Carrier.Heifers => new(0, 0, 1),
        Carrier.DryCows => new(0, 1, 0),
        _ => new(1, 0, 0),
    };

    /// <summary>The shares among the animals that a plan counts on, those asked about among them; all cows in milk where there are none.</summary>
    public static CarrierShares Of(ListStanding list)
    {
        ArgumentNullException.ThrowIfNull(list);
        return Of(list.Animals.Where(animal => animal.IsCounted).Select(animal => (animal.Sort, animal.IsDry)));
    }

    /// <summary>The shares among animals; all cows in milk where there are none.</summary>
    public static CarrierShares Of(IEnumerable<(AnimalSort Sort, Truth IsDry)> animals)
    {
        ArgumentNullException.ThrowIfNull(animals);
        var (of, cows, dry, heifers, either) = (0, 0, 0, 0, 0);
        foreach (var (sort, isDry) in animals)
        {
            of++;
            cows += sort == AnimalSort.Cow && isDry == Truth.False ? 1 : 0;
            dry += sort == AnimalSort.Cow && isDry == Truth.True ? 1 : 0;
            heifers += sort == AnimalSort.Heifer ? 1 : 0;
            either += sort is AnimalSort.NotKnown or AnimalSort.SexNotKnown ? 1 : 0;
        }

        return of == 0 ? Exactly(0) : new((double)cows / of, (double)dry / of, (double)heifers / of, (double)(of - cows - dry - heifers - either) / of, (double)either / of);
    }

    /// <summary>The shares where some of one sort join so many.</summary>
    public CarrierShares With(Carrier carrier, int more, int animals)
    {
        var (here, there) = (All(carrier), animals + more == 0 ? 0 : (double)more / (animals + more));
        return new(Mixed(Cows, here.Cows), Mixed(DryCows, here.DryCows), Mixed(Heifers, here.Heifers), Mixed(CowsOfAnySort, 0), Mixed(NotKnown, 0));

        double Mixed(double now, double joined) => ((1 - there) * now) + (there * joined);
    }

    /// <summary>The sorts that there may be, cows in milk where nobody is there.</summary>
    internal IEnumerable<Carrier> Sorts()
    {
        var any = NotKnown > 0;
        if (any || Cows > 0 || CowsOfAnySort > 0 || (DryCows <= 0 && Heifers <= 0))
        {
            yield return Carrier.Cows;
        }

        if (any || DryCows > 0 || CowsOfAnySort > 0)
        {
            yield return Carrier.DryCows;
        }

        if (any || Heifers > 0)
        {
            yield return Carrier.Heifers;
        }
    }

    /// <summary>
    /// How much of them counts as each sort of <see cref="Sorts"/>. One of whom it is not known which she is counts as the sort that does worse: nobody is promised more for not
    /// having been written down.
    /// </summary>
    /// <param name="share">What each sort does.</param>
    internal IEnumerable<(Carrier Sort, double Part)> Parts(Func<Carrier, double> share)
    {
        Carrier[] sorts = [.. Sorts()];
        var worst = sorts.MinBy(share);
        var worstCow = sorts.Contains(Carrier.DryCows) ? sorts.Where(sort => sort != Carrier.Heifers).MinBy(share) : Carrier.Cows;
        foreach (var sort in sorts)
        {
            yield return (sort, (sort switch { Carrier.Heifers => Heifers, Carrier.DryCows => DryCows, _ => Cows }) + (sort == worstCow ? CowsOfAnySort : 0) + (sort == worst ? NotKnown : 0));
        }
    }
}
