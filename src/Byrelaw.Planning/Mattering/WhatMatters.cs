using MathNet.Numerics.Distributions;

namespace Byrelaw.Planning.Mattering;

/// <summary>What matters most: every assumption that the forecast rests on is put, as if it were exact, where it may well lie, and the season is forecast again.</summary>
/// <remarks>The names stay as they are: what would be planned otherwise is another question.</remarks>
internal sealed class WhatMatters
{
    private const double Poor = 0.1;
    private const double Good = 0.9;
    private const double Tenth = 0.1;

    private readonly SeasonInputs _inputs;
    private readonly Chain _chain;
    private readonly ImmutableArray<SessionSize> _sessions;
    private readonly CarrierShares _carriers;

    private WhatMatters(SeasonInputs inputs, Chain chain, ImmutableArray<SessionSize> sessions, CarrierShares carriers) => (_inputs, _chain, _sessions, _carriers) = (inputs, chain, sessions, carriers);

    /// <summary>All that makes a difference, the largest first; none where nothing is forecast.</summary>
    /// <param name="inputs">The season's.</param>
    /// <param name="numbers">And its numbers: it is told as if all that is asked turned out well, for of nobody nothing matters.</param>
    /// <param name="days">Its sessions' days.</param>
    public static ImmutableArray<Matter> Of(SeasonInputs inputs, SeasonNumbers numbers, ImmutableArray<Session> days)
    {
        var named = inputs.IfAllPass ?? inputs.Named;
        var (sessions, carriers) = named is null ? (numbers.Sessions, inputs.Carriers) : (named.Sessions, named.Carriers);
        var reading = ChainReading.Of(inputs.Plans, inputs.Aims, carriers);
        if (reading.Chain is not { } chain || sessions.IsEmpty || days.IsEmpty)
        {
            return [];
        }

        var what = new WhatMatters(inputs, chain, sessions, carriers);
        return
        [
            .. reading.Used.Select(what.Of).Concat(what.Methods(days[0])).OfType<Matter>()
                .Where(matter => matter.Difference >= 0.005).OrderByDescending(matter => matter.Difference),
        ];
    }

    /// <summary>What is counted: what is wanted, else what comes last.</summary>
    internal static Stage Counted(Chain chain) => chain.Goal?.Of ?? (chain.AfterTransfer.IsEmpty ? Stage.Transfers : chain.AfterTransfer[^1].To);

    private Matter? Of(Assumption one)
    {
        var (low, high, exact) = one switch
        {
            { Share: { } share } => Range(share.ToRate()),
            { Mean: > 0 and var mean, Spread: > 0 and var spread, Weight: { } weight } => (Quantile(mean, spread * spread / weight, Poor), Quantile(mean, spread * spread / weight, Good), false),
            { Mean: > 0 and var mean } => ((1 - Tenth) * mean, (1 + Tenth) * mean, true),
            _ => (0, 0, true),
        };
        return low == high ? null : new(one, null, null, low, high, exact, Expected(Put(one, low)), Expected(Put(one, high)));

        static double Quantile(double mean, double variance, double chance) => Gamma.InvCDF(mean * mean / variance, mean / variance, chance);
    }

    private IEnumerable<Matter?> Methods(Session first) =>
        from name in _sessions.SelectMany(session => session.Treated).Select(treated => treated.Method.Name).Distinct()
        let method = _inputs.Plans.Method(name)
        where method is not null
        from loss in UseChain.Of(method, TreatmentCalendar.Of(method, first), _inputs.Plans).Losses
        where loss.Step != UseStep.InTheWindow && loss.Kept.Share > 0
        let range = Range(loss.Kept)
        where range.Low < range.High
        select new Matter(null, name, loss.Step, range.Low, range.High, range.IsExact, Expected(_chain, Used(name, range.Low / loss.Kept.Share)), Expected(_chain, Used(name, range.High / loss.Kept.Share)));

    private static (double Low, double High, bool IsExact) Range(Rate rate) =>
        rate.IsExact ? ((1 - Tenth) * rate.Share, Math.Min((1 + Tenth) * rate.Share, 1), true) : (rate.Quantile(Poor), rate.Quantile(Good), false);

    private Chain? Put(Assumption one, double value)
    {
        var put = one.Share is null ? one with { Mean = value, Weight = null } : one with { Share = new Share(value, null, null, one.Span) };
        return ChainReading.Of(_inputs.Plans with { Assumptions = _inputs.Plans.Assumptions.Replace(one, put) }, _inputs.Aims, _carriers).Chain;
    }

    private ImmutableArray<SessionSize> Used(string method, double times) =>
    [
        .. _sessions.Select(session => session with
        {
            Treated = [.. session.Treated.Select(treated => treated.Method.Name == method ? treated with { Method = new(method, treated.Method.Used with { Share = Math.Min(1, times * treated.Method.Used.Share) }) } : treated)],
        }),
    ];

    private double Expected(Chain? chain) => chain is null ? 0 : Expected(chain, _sessions);

    private double Expected(Chain chain, ImmutableArray<SessionSize> sessions)
    {
        var counted = chain with { Goal = new(Counted(_chain), 1, 0.5) };
        return new Forecaster(counted, isRough: true).Wanted([.. sessions.Select(session => session with { Own = [.. session.Own.Select(donor => Again(chain, donor))] })]).Mean;
    }

    /// <summary>A donor with a line of her own, by the chain as it is now.</summary>
    private static OwnDonor Again(Chain chain, OwnDonor donor) => chain.Own.FirstOrDefault(one => one.Number == donor.Number) is { } own
        ? own with { IsAsked = donor.IsAsked } : donor with { PerTime = chain.Source.PerTime, Fit = chain.Source.Fit };
}
