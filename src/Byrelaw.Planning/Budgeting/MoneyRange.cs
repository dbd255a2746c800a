using MathNet.Numerics.Distributions;

namespace Byrelaw.Planning.Budgeting;

/// <summary>The chances of every total, on a ladder of money in small steps.</summary>
/// <param name="least">The amount of the first rung.</param>
/// <param name="step">From rung to rung; 0 where the total is certain.</param>
/// <param name="rungs">How many steps above the least.</param>
internal sealed class MoneyRange(double least, double step, Counts rungs)
{
    /// <summary>Steps to the expected amount that depends on the season: a range is told to within one hundredth of it.</summary>
    private const double Steps = 120;

    /// <summary>The amount that is not exceeded with this chance.</summary>
    public double Quantile(double chance)
    {
        // Between two rungs the chance is taken to rise evenly.
        var rung = rungs.Quantile(chance);
        var above = 1 - rungs.AtLeast(rung + 1) - chance;
        var within = rungs.Exact(rung) > 0 ? above / rungs.Exact(rung) : 0;
        return least + (step * (rung + 0.5 - within));
    }

    /// <summary>The chance that the total is no more than this.</summary>
    public double AtMost(double amount)
    {
        if (step == 0)
        {
            return amount >= least ? 1 : 0;
        }

        var place = ((amount - least) / step) + 0.5;
        return place < 0 ? 0 : Math.Min(1 - rungs.AtLeast((int)place) + (rungs.Exact((int)place) * (place - (int)place)), 1);
    }

    /// <summary>The range of a forecast programme's total.</summary>
    public static MoneyRange Of(Forecast forecast, ImmutableArray<ExpectedCharge> lines, Rate? fitToFreeze)
    {
        var varying = lines.Where(line => line.Varies).ToArray();
        var (expected, total) = (varying.Sum(line => line.Amount), lines.Sum(line => line.Amount));
        var noise = Math.Sqrt(lines.Sum(line => Math.Pow(line.Charge.Spread * line.Number, 2)));
        if (expected <= 0 && noise <= 0)
        {
            return new(total, 0, Counts.Exactly(0));
        }

        var step = (expected + (4 * noise)) / Steps;
        var season = expected > 0
            ? new SeasonMoney(step, Sum(CostUnit.Embryo), Sum(CostUnit.Transfer, CostUnit.EmbryoTransferred), Sum(CostUnit.EmbryoFrozen) * (fitToFreeze?.Share ?? 0), Sum(CostUnit.Pregnancy)).Of(forecast)
            : Counts.Exactly(0);
        var (prices, below) = Prices(noise / step);
        return new(total - expected - (below * step), step, season.Plus(prices));

        double Sum(params CostUnit[] units) => varying.Where(line => units.Contains(line.Charge.Per)).Sum(line => line.Charge.Price);
    }

    /// <summary>What prices add or take away, as steps above the least: a price's spread counts at the number expected.</summary>
    private static (Counts Prices, int Below) Prices(double spread)
    {
        var below = (int)Math.Ceiling(4 * spread);
        return below == 0
            ? (Counts.Exactly(0), 0)
            : (new([.. Enumerable.Range(-below, (2 * below) + 1).Select(rung => Normal.PDF(0, spread, rung))]), below);
    }
}
