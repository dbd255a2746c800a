namespace Byrelaw.Planning.Recipients;

/// <summary>
/// How many animals to treat before it is known how many embryos there will be: too many stand idle, too few leave embryos over. The
/// best number is where the money spent in vain on both is least.
/// </summary>
/// <param name="Points">Every number of animals that was tried, from none to where twice the least would be spent in vain.</param>
/// <param name="Best">The one with the least spent in vain.</param>
/// <param name="Idle">What an accepted recipient that finds no embryo has cost.</param>
/// <param name="Surplus">What an embryo that finds no recipient has cost, less what freezing saves of it.</param>
public sealed record Balance(ImmutableArray<BalancePoint> Points, BalancePoint Best, double Idle, double Surplus)
{
    /// <summary>More than any farm treats at one session: so far it is tried where next to nobody that is treated is used.</summary>
    private const int MostAnimals = 20_000;

    /// <summary>Finds the best number.</summary>
    /// <param name="embryos">Of one session.</param>
    /// <param name="used">The share of animals treated that is accepted.</param>
    /// <param name="idle">What an idle recipient has cost; 0 or more.</param>
    /// <param name="surplus">What a surplus embryo has cost; 0 or more, one of the two above 0.</param>
    public static Balance Find(Counts embryos, Rate used, double idle, double surplus)
    {
        // More than it takes to have one accepted for each embryo, were there the most, is in vain for sure.
        var most = used.Share > 0 ? (int)Math.Min(Math.Ceiling(embryos.Most / used.Share), MostAnimals) : 0;
        var points = ImmutableArray.CreateBuilder<BalancePoint>();
        BalancePoint? best = null;
        foreach (var recipients in Counts.OneByOne(most, used))
        {
            var point = Point(embryos, recipients, points.Count, idle, surplus);
            points.Add(point);
            best = best is null || point.InVain < best.InVain ? point : best;
            if (point.InVain > 2 * best.InVain)
            {
                break;
            }
        }

        return new(points.ToImmutable(), best!, idle, surplus);
    }

    /// <summary>What a surplus embryo loses where it can be frozen.</summary>
    /// <param name="cost">Of making one.</param>
    /// <param name="fitToFreeze">The share good enough to freeze.</param>
    /// <param name="freezing">What freezing one costs.</param>
    /// <param name="frozenToFresh">What a frozen embryo is worth of a fresh one: the ratio of the calves that come of them.</param>
    public static double Frozen(double cost, double fitToFreeze, double freezing, double frozenToFresh) =>
        cost - (fitToFreeze * Math.Max((cost * Math.Min(frozenToFresh, 1)) - freezing, 0));

    private static BalancePoint Point(Counts embryos, Counts recipients, int animals, double idle, double surplus)
    {
        var (left, standing) = (embryos.Beyond(recipients), recipients.Beyond(embryos));
        return new(animals, left.Chance, left.Mean, standing.Chance, standing.Mean, (surplus * left.Mean) + (idle * standing.Mean));
    }
}

/// <summary>What comes of treating so many.</summary>
/// <param name="Animals">Treated.</param>
/// <param name="ChanceOfSurplus">That embryos are left over.</param>
/// <param name="Surplus">Embryos left over, on average.</param>
/// <param name="ChanceOfIdle">That recipients stand idle.</param>
/// <param name="Idle">Recipients that do, on average.</param>
/// <param name="InVain">Money spent on both for nothing, on average.</param>
public sealed record BalancePoint(int Animals, double ChanceOfSurplus, double Surplus, double ChanceOfIdle, double Idle, double InVain);
