namespace Byrelaw.Planning.Budgeting;

/// <summary>
/// What of a season's money depends on how it goes, in steps. Embryos, transfers, freezing and pregnancies of one session go together, and
/// sessions share their rates, so that amounts are added up case by case, as transfers are.
/// </summary>
internal static class SeasonMoney
{
    /// <param name="forecast">Of the sessions.</param>
    /// <param name="step">Of money.</param>
    /// <param name="embryo">Paid for each embryo fit for transfer.</param>
    /// <param name="transfer">For each transfer.</param>
    /// <param name="surplus">For each embryo left over.</param>
    /// <param name="pregnancy">For each pregnancy at the first check.</param>
    public static Counts Of(Forecast forecast, double step, double embryo, double transfer, double surplus, double pregnancy)
    {
        var sessions = forecast.Sessions.Select(meeting => meeting.Session).ToArray();
        var cases = new RateCases(forecast.Chain, 8, 5);
        var pregnant = forecast.Chain.AfterTransfer.FirstOrDefault(one => one.To == Stage.Pregnant)?.Rate;
        var pregnancies = pregnancy > 0 && pregnant is { } rate ? StandIns.ForRate(rate, 5) : [(1, 0)];
        return Counts.Mixed(
        [
            .. from embryoCase in cases.Embryos([.. sessions])
               from recipientCase in cases.Recipients([.. sessions])
               from share in pregnancies
               let season = sessions.Select((session, i) => Session(embryoCase.Embryos[i], recipientCase.Recipients[i], share.Value).Times(session.Times))
               select (embryoCase.Weight * recipientCase.Weight * share.Weight, season.Aggregate((sum, next) => sum.Plus(next))),
        ]);

        Counts Session(Counts embryos, Counts? recipients, double share)
        {
            var ladder = new Ladder(step, (embryos.Most * (embryo + surplus)) + (Math.Min(embryos.Most, recipients?.Most ?? embryos.Most) * (transfer + pregnancy)));
            var paid = Counts.OneByOne(Math.Min(embryos.Most, recipients?.Most ?? embryos.Most), new(share)).ToArray();
            for (var made = 0; made <= embryos.Most; made++)
            {
                for (var used = 0; used <= made && used < paid.Length; used++)
                {
                    var chance = embryos.Exact(made) * (recipients is null ? (used == made ? 1 : 0) : used == made ? recipients.AtLeast(used) : recipients.Exact(used));
                    for (var held = 0; held <= paid[used].Most; held++)
                    {
                        ladder.Add((made * embryo) + (used * transfer) + ((made - used) * surplus) + (held * pregnancy), chance * paid[used].Exact(held));
                    }
                }
            }

            return ladder.Counts;
        }
    }

    /// <summary>Amounts on the rungs of a ladder; one between two rungs is shared out so that the average stays.</summary>
    private sealed class Ladder(double step, double most)
    {
        private readonly double[] _chances = new double[(int)(most / step) + 2];

        public Counts Counts => new(_chances);

        public void Add(double amount, double chance)
        {
            var (rung, rest) = ((int)(amount / step), amount / step % 1);
            _chances[rung] += chance * (1 - rest);
            _chances[rung + 1] += chance * rest;
        }
    }
}
