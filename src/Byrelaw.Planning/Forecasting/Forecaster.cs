namespace Byrelaw.Planning.Forecasting;

/// <summary>Works out what to expect, from donors to calves, of sessions that share one chain of rates.</summary>
/// <remarks>Keep one for all the sessions that are compared: what can be worked out once is.</remarks>
public sealed class Forecaster
{
    private readonly RateCases _cases;
    private readonly TankForecast _tank;
    private readonly TankForecast _roughTank;
    private readonly Dictionary<int, Counts> _collected = [];
    private readonly Dictionary<int, Counts> _embryos = [];

    /// <param name="chain">What forecasts rest on.</param>
    /// <param name="isRough">Whether a few stand-ins for each rate will do: means are right, and nobody asks for chances.</param>
    public Forecaster(Chain chain, bool isRough = false)
    {
        Chain = chain;
        _cases = isRough ? new(chain, 5, 3) : new(chain);
        _tank = new(chain, _cases);
        _roughTank = new(chain, new(chain, 6, 3));
    }

    /// <summary>The chain.</summary>
    public Chain Chain { get; }

    /// <summary>What to expect of these sessions.</summary>
    public Forecast Forecast(params ImmutableArray<SessionSize> sessions)
    {
        var stages = ImmutableArray.CreateBuilder<StageForecast>();
        AddEmbryos(stages, sessions);
        if (Recipients(sessions) is { } recipients)
        {
            stages.Add(new(Stage.Recipients, recipients));
        }

        if (IsThawed(sessions))
        {
            return WithTank(sessions, stages);
        }

        var last = new StageForecast(Stage.Transfers, Transfers(sessions));
        stages.Add(last);
        foreach (var step in Chain.AfterTransfer)
        {
            last = new(step.To, last.Counts.ThinnedBy(step.Rate), last.Stage, step.Rate);
            stages.Add(last);
        }

        return new(Chain, stages.ToImmutable(), [.. sessions.Select(Meet)]);
    }

    /// <summary>Only how many there will be of what is wanted: quick enough to try many numbers of everything.</summary>
    /// <exception cref="InvalidOperationException">Nothing is wanted.</exception>
    public Counts Wanted(params ImmutableArray<SessionSize> sessions)
    {
        var goal = Chain.Goal ?? throw new InvalidOperationException("Nothing is wanted.");
        if (IsThawed(sessions))
        {
            // Straws are counted with fresh transfers, which takes long: what is only compared with the like of it is worked out with fewer stand-ins.
            var carried = _roughTank.Transfers(sessions);
            return goal.Of == Stage.Transfers ? carried.Sum() : _roughTank.After(carried).First(stage => stage.Step.To == goal.Of).Counts;
        }

        return Chain.AfterTransfer.TakeWhile(step => step.To <= goal.Of).Aggregate(Transfers(sessions), (counts, step) => counts.ThinnedBy(step.Rate));
    }

    /// <summary>How embryos and recipients meet at one such session, taken by itself.</summary>
    public Meeting Meet(SessionSize session)
    {
        var embryos = session.HasAlikeDonors ? Embryos(session.AllDonors) : _cases.EmbryosOf(session);
        return session.Recipients(method => method.Used) is { } recipients
            ? new(session, embryos, recipients, embryos.OrFewer(recipients), embryos.Beyond(recipients), recipients.Beyond(embryos))
            : new(session, embryos, null, embryos, Excess.None, Excess.None);
    }

    /// <summary>Whether straws are counted: a session of which nobody says how many recipients it has finds one for every embryo, and leaves none for a straw.</summary>
    private bool IsThawed(ImmutableArray<SessionSize> sessions) => Chain.Tank is { Straws: > 0 } && sessions.All(session => !session.Treated.IsEmpty);

    private Forecast WithTank(ImmutableArray<SessionSize> sessions, ImmutableArray<StageForecast>.Builder stages)
    {
        var carried = _tank.Transfers(sessions);
        stages.Add(new(Stage.Transfers, carried.Sum()));
        foreach (var ((to, rate), counts) in _tank.After(carried))
        {
            var frozen = Chain.Tank!.AfterTransfer.First(step => step.To == to);
            stages.Add(new(to, counts, stages[^1].Stage, rate, frozen.IsShared ? null : frozen.Rate));
        }

        return new(Chain, stages.ToImmutable(), [.. sessions.Select(Meet)]) { Thawed = carried.Second() };
    }

    private void AddEmbryos(ImmutableArray<StageForecast>.Builder stages, ImmutableArray<SessionSize> sessions)
    {
        var times = sessions.Sum(session => session.Times * session.AllDonors);
        var (raw, embryos) = sessions.All(session => session.HasAlikeDonors) ? (Collected(times), Embryos(times)) : _cases.OfSeason(sessions);
        stages.Add(new(Stage.Collections, sessions.Select(session => session.DonorCounts.Times(session.Times)).Aggregate(Counts.Exactly(0), (sum, next) => sum.Plus(next))));
        switch (Chain.Source.Kind)
        {
            case EmbryoSourceKind.Collected:
                stages.Add(new(Stage.Oocytes, raw));
                stages.Add(new(Stage.Embryos, embryos, Stage.Oocytes, Chain.Source.Fit));
                break;
            case EmbryoSourceKind.Flushed:
                stages.Add(new(Stage.Embryos, embryos));
                break;
            default:
                stages.Add(new(Stage.Embryos, embryos, Stage.Collections, Chain.Source.Fit));
                break;
        }
    }

    private Counts Embryos(int times) => Known(_embryos, times, () => Collected(times).ThinnedBy(Chain.Source.Fit));

    private Counts Collected(int times) => Known(_collected, times, () => Counts.Mixed(
        [.. Chain.Source.PerTime.Cases(16).Select(@case => (@case.Weight, Counts.Around(times * @case.Mean, times * @case.Variance)))]));

    private static Counts Known(Dictionary<int, Counts> known, int times, Func<Counts> work)
    {
        if (!known.TryGetValue(times, out var counts))
        {
            known[times] = counts = work();
        }

        return counts;
    }

    // A method's rate is shared by all sessions, so its animals are counted together.
    private static Counts? Recipients(ImmutableArray<SessionSize> sessions) =>
        sessions.Any(session => session.Treated.IsEmpty)
            ? null
            : sessions.SelectMany(session => session.Treated.Select(treated => (treated.Method, Counts: treated.Counts(session.Usable).Times(session.Times))))
                .GroupBy(treated => treated.Method)
                .Select(method => method.Select(treated => treated.Counts).Aggregate((sum, next) => sum.Plus(next)).ThinnedBy(method.Key.Used))
                .Aggregate(Counts.Exactly(0), (sum, next) => sum.Plus(next));

    private Counts Transfers(ImmutableArray<SessionSize> sessions)
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

    private static Counts Season(ImmutableArray<SessionSize> sessions, ImmutableArray<Counts> embryos, ImmutableArray<Counts?> recipients)
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
