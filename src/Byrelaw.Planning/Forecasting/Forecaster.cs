namespace Byrelaw.Planning.Forecasting;

/// <summary>Works out what to expect, from donors to calves, of sessions that share one chain of rates.</summary>
/// <param name="chain">What forecasts rest on.</param>
/// <remarks>Keep one for all the sessions that are compared: what can be worked out once is.</remarks>
public sealed class Forecaster(Chain chain)
{
    private readonly RateCases _cases = new(chain);

    /// <summary>The chain.</summary>
    public Chain Chain => chain;

    /// <summary>What to expect of these sessions.</summary>
    public Forecast Forecast(params ImmutableArray<Session> sessions)
    {
        var stages = ImmutableArray.CreateBuilder<StageForecast>();
        AddEmbryos(stages, sessions.Sum(session => session.Times * session.Donors));
        if (Recipients(sessions) is { } recipients)
        {
            stages.Add(new(Stage.Recipients, recipients));
        }

        var meetings = sessions.Select(Meet).ToImmutableArray();
        var last = new StageForecast(Stage.Transfers, Transfers(sessions, meetings));
        stages.Add(last);
        foreach (var step in chain.AfterTransfer)
        {
            last = new(step.To, last.Counts.ThinnedBy(step.Rate), last.Stage, step.Rate);
            stages.Add(last);
        }

        return new(chain, stages.ToImmutable(), meetings);
    }

    /// <summary>How embryos and recipients meet at one such session, taken by itself.</summary>
    public Meeting Meet(Session session)
    {
        var embryos = Raw(session.Donors).ThinnedBy(chain.Source.Fit);
        return session.Recipients(method => method.Used) is { } recipients
            ? new(session, embryos, recipients, embryos.OrFewer(recipients), embryos.Beyond(recipients), recipients.Beyond(embryos))
            : new(session, embryos, null, embryos, Counts.Exactly(0), Counts.Exactly(0));
    }

    private void AddEmbryos(ImmutableArray<StageForecast>.Builder stages, int times)
    {
        var raw = Raw(times);
        stages.Add(new(Stage.Collections, Counts.Exactly(times)));
        switch (chain.Source.Kind)
        {
            case EmbryoSourceKind.Collected:
                stages.Add(new(Stage.Oocytes, raw));
                stages.Add(new(Stage.Embryos, raw.ThinnedBy(chain.Source.Fit), Stage.Oocytes, chain.Source.Fit));
                break;
            case EmbryoSourceKind.Flushed:
                stages.Add(new(Stage.Embryos, raw));
                break;
            default:
                stages.Add(new(Stage.Embryos, raw.ThinnedBy(chain.Source.Fit), Stage.Collections, chain.Source.Fit));
                break;
        }
    }

    private Counts Raw(int times) => Counts.Mixed(
        [.. chain.Source.PerTime.Cases(16).Select(@case => (@case.Weight, Counts.Around(times * @case.Mean, times * @case.Variance)))]);

    // A method's rate is shared by all sessions, so its animals are counted together.
    private static Counts? Recipients(ImmutableArray<Session> sessions) =>
        sessions.Any(session => session.Treated.IsEmpty)
            ? null
            : sessions.SelectMany(session => session.Treated.Select(treated => (treated.Method, Animals: treated.Animals * session.Times)))
                .GroupBy(treated => treated.Method)
                .Select(method => Counts.Of(method.Sum(treated => treated.Animals), method.Key.Used))
                .Aggregate(Counts.Exactly(0), (sum, next) => sum.Plus(next));

    private Counts Transfers(ImmutableArray<Session> sessions, ImmutableArray<Meeting> meetings)
    {
        if (meetings is [{ Session.Times: 1 } only])
        {
            return only.Transfers;
        }

        var recipients = _cases.Recipients(sessions);
        return Counts.Mixed(
        [
            .. from embryoCase in _cases.Embryos(sessions)
               from recipientCase in recipients
               select (embryoCase.Weight * recipientCase.Weight, Season(sessions, embryoCase.Embryos, recipientCase.Recipients)),
        ]);
    }

    private static Counts Season(ImmutableArray<Session> sessions, ImmutableArray<Counts> embryos, ImmutableArray<Counts?> recipients)
    {
        var sum = Counts.Exactly(0);
        for (var i = 0; i < sessions.Length; i++)
        {
            var transfers = recipients[i] is { } accepted ? embryos[i].OrFewer(accepted) : embryos[i];
            sum = sum.Plus(transfers.Times(sessions[i].Times));
        }

        return sum;
    }
}
