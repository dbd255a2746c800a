namespace Byrelaw.Planning.Forecasting;

/// <summary>Works out what to expect, from donors to calves, of sessions that share one chain of rates.</summary>
/// <param name="chain">What forecasts rest on.</param>
/// <remarks>Keep one for all the sessions that are compared: what can be worked out once is.</remarks>
public sealed class Forecaster(Chain chain)
{
    private readonly RateCases _cases = new(chain);
    private readonly Dictionary<int, Counts> _collected = [];
    private readonly Dictionary<int, Counts> _embryos = [];

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

        var last = new StageForecast(Stage.Transfers, Transfers(sessions));
        stages.Add(last);
        foreach (var step in chain.AfterTransfer)
        {
            last = new(step.To, last.Counts.ThinnedBy(step.Rate), last.Stage, step.Rate);
            stages.Add(last);
        }

        return new(chain, stages.ToImmutable(), [.. sessions.Select(Meet)]);
    }

    /// <summary>Only how many there will be of what is wanted: quick enough to try many numbers of everything.</summary>
    /// <exception cref="InvalidOperationException">Nothing is wanted.</exception>
    public Counts Wanted(params ImmutableArray<Session> sessions)
    {
        var goal = chain.Goal ?? throw new InvalidOperationException("Nothing is wanted.");
        return chain.AfterTransfer.TakeWhile(step => step.To <= goal.Of).Aggregate(Transfers(sessions), (counts, step) => counts.ThinnedBy(step.Rate));
    }

    /// <summary>How embryos and recipients meet at one such session, taken by itself.</summary>
    public Meeting Meet(Session session)
    {
        var embryos = Embryos(session.Donors);
        return session.Recipients(method => method.Used) is { } recipients
            ? new(session, embryos, recipients, embryos.OrFewer(recipients), embryos.Beyond(recipients), recipients.Beyond(embryos))
            : new(session, embryos, null, embryos, Excess.None, Excess.None);
    }

    private void AddEmbryos(ImmutableArray<StageForecast>.Builder stages, int times)
    {
        var raw = Collected(times);
        stages.Add(new(Stage.Collections, Counts.Exactly(times)));
        switch (chain.Source.Kind)
        {
            case EmbryoSourceKind.Collected:
                stages.Add(new(Stage.Oocytes, raw));
                stages.Add(new(Stage.Embryos, Embryos(times), Stage.Oocytes, chain.Source.Fit));
                break;
            case EmbryoSourceKind.Flushed:
                stages.Add(new(Stage.Embryos, raw));
                break;
            default:
                stages.Add(new(Stage.Embryos, Embryos(times), Stage.Collections, chain.Source.Fit));
                break;
        }
    }

    private Counts Embryos(int times) => Known(_embryos, times, () => Collected(times).ThinnedBy(chain.Source.Fit));

    private Counts Collected(int times) => Known(_collected, times, () => Counts.Mixed(
        [.. chain.Source.PerTime.Cases(16).Select(@case => (@case.Weight, Counts.Around(times * @case.Mean, times * @case.Variance)))]));

    private static Counts Known(Dictionary<int, Counts> known, int times, Func<Counts> work)
    {
        if (!known.TryGetValue(times, out var counts))
        {
            known[times] = counts = work();
        }

        return counts;
    }

    // A method's rate is shared by all sessions, so its animals are counted together.
    private static Counts? Recipients(ImmutableArray<Session> sessions) =>
        sessions.Any(session => session.Treated.IsEmpty)
            ? null
            : sessions.SelectMany(session => session.Treated.Select(treated => (treated.Method, Animals: treated.Animals * session.Times)))
                .GroupBy(treated => treated.Method)
                .Select(method => Counts.Of(method.Sum(treated => treated.Animals), method.Key.Used))
                .Aggregate(Counts.Exactly(0), (sum, next) => sum.Plus(next));

    private Counts Transfers(ImmutableArray<Session> sessions)
    {
        if (sessions is [{ Times: 1 } only])
        {
            return Meet(only).Transfers;
        }

        var recipients = _cases.Recipients(sessions);

        // Embryos beyond all that a session's recipients can carry make no transfer more: they share one last place.
        int?[] most = [.. sessions.Select((_, i) => recipients.Max(@case => @case.Recipients[i]?.Most))];
        return Counts.Mixed(
        [
            .. from embryoCase in _cases.Embryos(sessions)
               let embryos = embryoCase.Embryos.Select((counts, i) => most[i] is { } places ? counts.OrAtMost(places) : counts).ToImmutableArray()
               from recipientCase in recipients
               let weight = embryoCase.Weight * recipientCase.Weight
               where weight > RateCases.Negligible
               select (weight, Season(sessions, embryos, recipientCase.Recipients)),
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
