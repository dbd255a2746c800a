using MathNet.Numerics.Distributions;

namespace Byrelaw.Planning.Tests.Forecasting;

/// <summary>
/// A season played out animal by animal: rates are drawn once for the season, then every oocyte, recipient and pregnancy by itself. It
/// shares no arithmetic with the forecast.
/// </summary>
internal sealed class Simulation(Chain chain, SessionSize[] sessions, int seed)
{
    private readonly Random _random = new(seed);

    /// <summary>How often each count came up at each stage.</summary>
    public Dictionary<Stage, Counts> Play(int seasons)
    {
        var tally = new Dictionary<Stage, List<int>>();
        foreach (var season in Seasons(seasons))
        {
            foreach (var (stage, count) in season)
            {
                tally.TryAdd(stage, []);
                tally[stage].Add(count);
            }
        }

        return tally.ToDictionary(stage => stage.Key, stage =>
            new Counts([.. Enumerable.Range(0, stage.Value.Max() + 1).Select(count => (double)stage.Value.Count(seen => seen == count))]));
    }

    /// <summary>Season after season, what was counted at each stage.</summary>
    public IEnumerable<Dictionary<Stage, int>> Seasons(int seasons) =>
        Enumerable.Range(0, seasons).Select(_ => Season().ToDictionary(stage => stage.Item1, stage => stage.Item2));

    private IEnumerable<(Stage, int)> Season()
    {
        var fit = Draw(chain.Source.Fit);
        var used = sessions.SelectMany(session => session.Treated).Select(treated => treated.Method).Distinct().ToDictionary(method => method, method => Draw(method.Used));
        var (mean, factor) = (chain.Source.PerTime.Mean, chain.Source.PerTime.Spread * chain.Source.PerTime.Spread / chain.Source.PerTime.Mean);
        if (chain.Source.PerTime.Weight is { } weight)
        {
            var shape = mean / factor * weight;
            mean = Gamma.Sample(_random, shape, shape / mean);
        }

        var (embryos, recipients, transfers, thawed) = (0, 0, 0, 0);
        foreach (var session in sessions.SelectMany(session => Enumerable.Repeat(session, session.Times)))
        {
            var made = 0;
            var collected = session.Donors + Among(session.DonorsAsked, session.Usable);
            for (var donor = 0; donor < collected; donor++)
            {
                made += Among(Oocytes(mean, factor), fit);
            }

            foreach (var donor in session.Own.Where(donor => !donor.IsAsked || _random.NextDouble() < session.Usable))
            {
                made += Among(Oocytes(donor.PerTime.Mean, donor.PerTime.Spread * donor.PerTime.Spread / donor.PerTime.Mean), donor.Fit.Share);
            }

            var accepted = session.Treated.Sum(treated => Among(treated.Animals + Among(treated.Asked, session.Usable), used[treated.Method]));
            embryos += made;
            recipients += accepted;
            transfers += Math.Min(made, accepted);
            thawed += Math.Min(Math.Max(accepted - made, 0), (chain.Tank?.Straws ?? 0) - thawed);
        }

        yield return (Stage.Embryos, embryos);
        yield return (Stage.Recipients, recipients);
        yield return (Stage.Transfers, transfers + thawed);
        var (left, leftOfTank) = (transfers, thawed);
        for (var i = 0; i < chain.AfterTransfer.Length; i++)
        {
            var (step, rate) = (chain.AfterTransfer[i], Draw(chain.AfterTransfer[i].Rate));
            left = Among(left, rate);
            if (chain.Tank is { } tank)
            {
                leftOfTank = Among(leftOfTank, tank.AfterTransfer[i].IsShared ? rate : Draw(tank.AfterTransfer[i].Rate));
            }

            yield return (step.To, left + leftOfTank);
        }
    }

    /// <summary>A negative binomial count is a Poisson count whose own mean varies as a gamma.</summary>
    private int Oocytes(double mean, double factor) => Poisson.Sample(_random, Gamma.Sample(_random, mean / (factor - 1), 1 / (factor - 1)));

    private double Draw(Rate rate) => rate.IsExact ? rate.Share : Beta.Sample(_random, rate.Share * rate.Weight!.Value, (1 - rate.Share) * rate.Weight.Value);

    private int Among(int animals, double share)
    {
        var count = 0;
        for (var animal = 0; animal < animals; animal++)
        {
            count += _random.NextDouble() < share ? 1 : 0;
        }

        return count;
    }
}
