namespace Byrelaw.Planning.Forecasting;

/// <summary>What comes of fresh embryos and of straws together, stage by stage.</summary>
/// <param name="chain">Asked only where it has a tank.</param>
/// <param name="cases">Of its rates.</param>
internal sealed class TankForecast(Chain chain, RateCases cases)
{
    private readonly Tank _tank = chain.Tank ?? new(0, []);

    /// <summary>Fresh embryos carried and straws thawed over the season.</summary>
    /// <param name="sessions">Every one with recipients that are counted.</param>
    public CountsTogether Transfers(ImmutableArray<SessionSize> sessions)
    {
        var recipients = cases.Recipients(sessions);
        int[] most = [.. sessions.Select((_, i) => recipients.Max(@case => @case.Recipients[i]!.Most))];
        return CountsTogether.Mixed(
        [
            .. from embryoCase in cases.Embryos(sessions)
               let embryos = embryoCase.Embryos.Select((counts, i) => counts.OrAtMost(most[i])).ToArray()
               from recipientCase in recipients
               let weight = embryoCase.Weight * recipientCase.Weight
               where weight > 1e-7
               select (weight, sessions.Select((session, i) => CountsTogether.OfSession(embryos[i], recipientCase.Recipients[i]!, _tank.Straws).Times(session.Times))
                   .Aggregate(CountsTogether.None(_tank.Straws), (sum, next) => sum.Plus(next))),
        ]);
    }

    /// <summary>The stages after the transfers, each with how many there are. Fresh and frozen are told apart as long as a rate to come tells them apart.</summary>
    public IEnumerable<(Step Step, Counts Counts)> After(CountsTogether transfers)
    {
        var apart = _tank.AfterTransfer.ToList().FindLastIndex(step => !step.IsShared);
        var (pairs, together) = (transfers, transfers.Sum());
        for (var i = 0; i < chain.AfterTransfer.Length; i++)
        {
            var (fresh, frozen) = (chain.AfterTransfer[i], _tank.AfterTransfer[i]);
            if (i <= apart)
            {
                pairs = frozen.IsShared ? pairs.ThinnedBy(fresh.Rate) : pairs.ThinnedBy(fresh.Rate, frozen.Rate);
                together = pairs.Sum();
            }
            else
            {
                together = together.ThinnedBy(fresh.Rate);
            }

            yield return (fresh, together);
        }
    }
}
