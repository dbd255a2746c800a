namespace Byrelaw.Planning.Forecasting;

/// <summary>
/// A few cases that stand in for all that uncertain rates may truly be. Within a case sessions tell nothing of each other; over the cases
/// they do, because they share the rates: a poor laboratory is poor all season.
/// </summary>
/// <param name="chain">Where embryos come from.</param>
/// <param name="most">The most cases for the share of fit embryos.</param>
/// <param name="ofMethod">Cases for one method's rate.</param>
internal sealed class RateCases(Chain chain, int most = 24, int ofMethod = 8)
{
    /// <summary>The weight of a case that changes nothing that is told: all such cases together weigh less than one in a million.</summary>
    public const double Negligible = 1e-10;

    private readonly ImmutableArray<(double Weight, double Mean, double Variance)> _embryos =
    [
        .. from yield in chain.Source.PerTime.Cases(5)
           from fit in StandIns.ForRate(chain.Source.Fit, Math.Min(Enough(chain.Source.Fit), most))
           select (yield.Weight * fit.Weight, yield.Mean * fit.Value,
               (fit.Value * fit.Value * yield.Variance) + (fit.Value * (1 - fit.Value) * yield.Mean)),
    ];

    private readonly Dictionary<int, ImmutableArray<Counts>> _sessions = [];
    private readonly Dictionary<(Rate, int), IReadOnlyList<(double Weight, double Value)>> _methods = [];

    /// <summary>Embryos at each session, case by case. Negative binomial counts that lose a share stay so.</summary>
    public IEnumerable<(double Weight, ImmutableArray<Counts> Embryos)> Embryos(ImmutableArray<Session> sessions) =>
        _embryos.Select((@case, i) => (@case.Weight, sessions.Select(session => OfDonors(session.Donors)[i]).ToImmutableArray()));

    /// <summary>Recipients accepted at each session, case by case; null where every embryo finds one.</summary>
    public IReadOnlyList<(double Weight, ImmutableArray<Counts?> Recipients)> Recipients(ImmutableArray<Session> sessions)
    {
        var methods = sessions.SelectMany(session => session.Treated).Select(treated => treated.Method).Distinct().ToArray();
        var cases = new List<(double Weight, ImmutableDictionary<Preparing, double> Shares)> { (1, ImmutableDictionary<Preparing, double>.Empty) };
        foreach (var method in methods)
        {
            cases = [.. from @case in cases
                        from share in SharesOf(method.Used, methods.Length == 1 ? ofMethod : Math.Min(ofMethod, 5))
                        select (@case.Weight * share.Weight, @case.Shares.Add(method, share.Value))];
        }

        return [.. cases.Select(@case => (@case.Weight, sessions.Select(session => session.Recipients(method => new(@case.Shares[method]))).ToImmutableArray()))];
    }

    /// <summary>Embryos of so many donors, case by case.</summary>
    private ImmutableArray<Counts> OfDonors(int donors)
    {
        if (!_sessions.TryGetValue(donors, out var counts))
        {
            _sessions[donors] = counts = [.. _embryos.Select(@case => Counts.Around(donors * @case.Mean, donors * @case.Variance))];
        }

        return counts;
    }

    private IReadOnlyList<(double Weight, double Value)> SharesOf(Rate rate, int cases)
    {
        if (!_methods.TryGetValue((rate, cases), out var shares))
        {
            _methods[(rate, cases)] = shares = StandIns.ForRate(rate, cases);
        }

        return shares;
    }

    // The vaguer a rate, the further apart its stand-ins lie; the tests hold these numbers to forecasts with many more.
    private static int Enough(Rate rate) => rate.Weight switch
    {
        >= 40 => 8,
        >= 10 => 16,
        _ => 24,
    };
}
