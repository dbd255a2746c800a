using Byrelaw.Planning.Chances;

namespace Byrelaw.Planning.Budgeting;

internal sealed partial class SeasonMoney
{
    /// <summary>The same where straws are thawed for recipients that find no fresh embryo: money and straws are counted together, for few embryos make many straws.</summary>
    /// <param name="money">Prices and steps.</param>
    /// <param name="tank">The straws.</param>
    private sealed class TankMoney(SeasonMoney money, Tank tank)
    {
        /// <summary>Straws are counted by so many at a time that a range to one hundredth is not lost.</summary>
        private const int MostSteps = 12;

        private readonly int _each = Math.Max(1, (tank.Straws + MostSteps - 1) / MostSteps);

        private int Steps => (tank.Straws + _each - 1) / _each;

        public Counts Of(
            ImmutableArray<SessionSize> sessions, IReadOnlyList<(double Weight, ImmutableArray<Counts> Embryos)> embryos, IReadOnlyList<(double Weight, ImmutableArray<Counts?> Recipients)> recipients,
            IReadOnlyList<(double Weight, Counts[] Paid)> pregnancies) => Counts.Mixed(
            [
                .. from embryoCase in embryos
                   from recipientCase in recipients
                   from held in pregnancies
                   let weight = embryoCase.Weight * recipientCase.Weight * held.Weight
                   where weight > 1e-7
                   select (weight, Thawed(sessions.Select((session, i) => OfSession(embryoCase.Embryos[i], recipientCase.Recipients[i]!, held.Paid).Times(session.Times))
                       .Aggregate(CountsTogether.None(Steps), (sum, next) => sum.Plus(next)))),
            ]);

        private CountsTogether OfSession(Counts embryos, Counts recipients, Counts[] paid)
        {
            var (step, embryo, transfer, surplus) = (money._step, money._embryo, money._transfer, money._surplus);
            var highest = (embryos.Most * (embryo + surplus)) + (recipients.Most * transfer) + (paid[^1].Most * step);
            Ladder[] all = [.. Enumerable.Range(0, Steps + 1).Select(_ => new Ladder(step, highest))];
            for (var used = 0; used <= Math.Min(embryos.Most, recipients.Most); used++)
            {
                var ladder = new Ladder(step, highest);
                for (var made = Math.Max(used, embryos.Least); made <= embryos.Most; made++)
                {
                    ladder.Add((made * embryo) + (used * transfer) + ((made - used) * surplus), embryos.Exact(made) * recipients.Exact(used));
                }

                all[0].Add(ladder, paid[used]);
                for (var straws = 1; used + straws <= recipients.Most && embryos.Exact(used) > 0; straws++)
                {
                    var place = Math.Min(straws, tank.Straws) / (double)_each;
                    var (rung, chance) = ((int)place, embryos.Exact(used) * recipients.Exact(used + straws));
                    Add(all[rung], (used * embryo) + (used * transfer), chance * (1 - (place - rung)), paid[used]);
                    Add(all[Math.Min(rung + 1, Steps)], (used * embryo) + (used * transfer), chance * (place - rung), paid[used]);
                }
            }

            return CountsTogether.Of([.. all.Select(ladder => ladder.Chances)]);

            void Add(Ladder to, double amount, double chance, Counts more)
            {
                if (chance > 0)
                {
                    var one = new Ladder(step, amount);
                    one.Add(amount, chance);
                    to.Add(one, more);
                }
            }
        }

        /// <summary>With what the straws cost: their transfers, and the pregnancies to expect of them.</summary>
        private Counts Thawed(CountsTogether pairs)
        {
            var share = tank.AfterTransfer.FirstOrDefault(one => one.To == Stage.Pregnant)?.Rate.Share ?? 0;
            var each = money._transfer + (money._pregnancy * share);
            var all = new Ladder(money._step, (pairs.Chances[0].Length * money._step) + (tank.Straws * each) + (2 * money._step));
            for (var steps = 0; steps < pairs.Chances.Count; steps++)
            {
                var cost = Math.Min(steps * _each, tank.Straws) * each / money._step;
                var rung = (int)cost;
                all.Add(pairs.Chances[steps], rung, 1 - (cost - rung));
                all.Add(pairs.Chances[steps], rung + 1, cost - rung);
            }

            return all.Counts!;
        }
    }
}
