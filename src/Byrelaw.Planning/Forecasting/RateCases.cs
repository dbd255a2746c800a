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

    private readonly ImmutableArray<(double Weight, DonorCase Case)> _embryos = Donors(Doubted(chain).PerTime, Doubted(chain).Fit, most);

    private readonly Dictionary<(int, int, double, ImmutableArray<OwnDonor>), ImmutableArray<Counts>> _sessions = [];
    private readonly Dictionary<(Rate, int), IReadOnlyList<(double Weight, double Value)>> _methods = [];

    /// <summary>Embryos at each session, case by case. Negative binomial counts that lose a share stay so.</summary>
    public IEnumerable<(double Weight, ImmutableArray<Counts> Embryos)> Embryos(ImmutableArray<SessionSize> sessions) =>
        _embryos.Select((@case, i) => (@case.Weight, sessions.Select(session => Embryos(session)[i]).ToImmutableArray()));

    /// <summary>Embryos of one session, all cases taken together.</summary>
    public Counts EmbryosOf(SessionSize session) => Counts.Mixed([.. Embryos(session).Select((counts, i) => (_embryos[i].Weight, counts))]);

    /// <summary>Embryos and oocytes of a season, all cases taken together.</summary>
    public (Counts Oocytes, Counts Embryos) OfSeason(ImmutableArray<SessionSize> sessions) => (
        Counts.Mixed([.. _embryos.Select(@case => (@case.Weight, Around(sessions, donor => @case.Case.Oocytes(donor.PerTime))))]),
        Counts.Mixed([.. _embryos.Select(@case => (@case.Weight, Around(sessions, donor => @case.Case.Embryos(donor.PerTime, donor.Fit))))]));

    /// <summary>Recipients accepted at each session, case by case; null where every embryo finds one.</summary>
    public IReadOnlyList<(double Weight, ImmutableArray<Counts?> Recipients)> Recipients(ImmutableArray<SessionSize> sessions)
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

    /// <summary>The yield and the share by whose doubts cases are told apart: those of all donors; where these are taken as exact, those of the first donor of whom that is not so.</summary>
    private static (Yield PerTime, Rate Fit) Doubted(Chain chain) => (
        chain.Own.Select(donor => donor.PerTime).Prepend(chain.Source.PerTime).FirstOrDefault(yield => yield is { Weight: not null, Mean: > 0, Spread: > 0 }, chain.Source.PerTime),
        chain.Own.Select(donor => donor.Fit).Prepend(chain.Source.Fit).FirstOrDefault(fit => !fit.IsExact, chain.Source.Fit));

    private static ImmutableArray<(double Weight, DonorCase Case)> Donors(Yield perTime, Rate share, int most) =>
    [
        .. from yield in perTime.Cases(5)
           from fit in StandIns.ForRate(share, Math.Min(Enough(share), most))
           select (yield.Weight * fit.Weight, new DonorCase(
               Apart(yield.Mean, perTime.Mean, perTime.Weight is { } weight ? perTime.Spread / Math.Sqrt(weight) : 0),
               Apart(fit.Value, share.Share, Math.Sqrt(share.Variance)))),
    ];

    private ImmutableArray<Counts> Embryos(SessionSize session)
    {
        var key = (session.Donors, session.DonorsAsked, session.Usable, session.Own);
        if (!_sessions.TryGetValue(key, out var counts))
        {
            _sessions[key] = counts = [.. _embryos.Select(@case => Around([session with { Times = 1 }], donor => @case.Case.Embryos(donor.PerTime, donor.Fit)))];
        }

        return counts;
    }

    /// <summary>All that the donors of sessions give: those that are collected for sure, and those who are if they turn out to be usable.</summary>
    private Counts Around(ImmutableArray<SessionSize> sessions, Func<OwnDonor, (double Mean, double Variance)> each)
    {
        var general = each(new OwnDonor("", chain.Source.PerTime, chain.Source.Fit));
        var (mean, variance, asked) = (0.0, 0.0, Counts.Exactly(0));
        foreach (var session in sessions)
        {
            Add(general, session.Times * session.Donors, 1);
            Add(general, session.Times * session.DonorsAsked, session.Usable);
            foreach (var donor in session.Own)
            {
                Add(each(donor), session.Times, donor.IsAsked ? session.Usable : 1);
            }
        }

        return asked.Most == 0 ? Counts.Around(mean, variance) : Counts.Around(mean, variance).Plus(asked);

        void Add((double Mean, double Variance) one, int times, double usable)
        {
            if (usable >= 1)
            {
                (mean, variance) = (mean + (times * one.Mean), variance + (times * one.Variance));
            }
            else if (times > 0)
            {
                var collected = Counts.Of(times, new(usable));
                asked = asked.Plus(Counts.Mixed([.. Enumerable.Range(0, collected.Most + 1).Select(count => (collected.Exact(count), Counts.Around(count * one.Mean, count * one.Variance)))]));
            }
        }
    }

    /// <summary>How far a stand-in lies from what is expected, in standard deviations.</summary>
    private static double Apart(double value, double mean, double deviation) => deviation > 0 ? (value - mean) / deviation : 0;

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
