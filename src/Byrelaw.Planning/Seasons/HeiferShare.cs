namespace Byrelaw.Planning.Seasons;

/// <summary>How much of the recipients are heifers, from 0 to 1: where of some it is not known whether they have calved, a share between two.</summary>
/// <param name="Least">Were all of those cows.</param>
/// <param name="Most">Were all of those heifers.</param>
public readonly record struct HeiferShare(double Least, double Most)
{
    /// <summary>Of every recipient it is known.</summary>
    public static HeiferShare Exactly(double share) => new(share, share);

    /// <summary>The share among the animals that a plan counts on, those asked about among them; all cows where there are none.</summary>
    public static HeiferShare Of(ListStanding list)
    {
        ArgumentNullException.ThrowIfNull(list);
        var (of, heifers, either) = (0, 0, 0);
        foreach (var animal in list.Animals)
        {
            if (animal.IsCounted)
            {
                of++;
                heifers += animal.Sort == AnimalSort.Heifer ? 1 : 0;
                either += animal.Sort is AnimalSort.NotKnown or AnimalSort.SexNotKnown ? 1 : 0;
            }
        }

        return of == 0 ? Exactly(0) : new((double)heifers / of, (double)(heifers + either) / of);
    }
}
