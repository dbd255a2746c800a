using Byrelaw.Planning.Chances;

namespace Byrelaw.Planning.Budgeting;

/// <summary>
/// What of a season's money depends on how it goes, in steps. Embryos, transfers, freezing and pregnancies of one session go together, and
/// sessions share their rates, so that amounts are added up case by case, as transfers are.
/// </summary>
/// <param name="step">Of money.</param>
/// <param name="embryo">Paid for each embryo fit for transfer.</param>
/// <param name="transfer">For each transfer.</param>
/// <param name="surplus">For each embryo left over.</param>
/// <param name="pregnancy">For each pregnancy at the first check.</param>
internal sealed partial class SeasonMoney(double step, double embryo, double transfer, double surplus, double pregnancy)
{
    private readonly double _step = step;
    private readonly double _embryo = embryo;
    private readonly double _transfer = transfer;
    private readonly double _surplus = surplus;
    private readonly double _pregnancy = pregnancy;

    /// <summary>The chances of every amount.</summary>
    public Counts Of(Forecast forecast)
    {
        ImmutableArray<SessionSize> sessions = [.. forecast.Sessions.Select(meeting => meeting.Session)];
        var cases = new RateCases(forecast.Chain, 8, 3);
        var recipients = cases.Recipients(sessions);
        var embryos = cases.Embryos(sessions).ToList();
        var pregnancies = Pregnancies(forecast, MostTransfers(embryos, recipients));
        if (forecast is { Thawed: not null, Chain.Tank: { } tank })
        {
            return new TankMoney(this, tank).Of(sessions, embryos, recipients, pregnancies);
        }

        return Counts.Mixed(
        [
            .. from embryoCase in embryos
               from recipientCase in recipients
               from held in pregnancies
               let weight = embryoCase.Weight * recipientCase.Weight * held.Weight
               where weight > RateCases.Negligible
               select (weight, sessions.Select((session, i) => OfSession(embryoCase.Embryos[i], recipientCase.Recipients[i], held.Paid).Times(session.Times)).Aggregate((sum, next) => sum.Plus(next))),
        ]);
    }

    /// <summary>The most transfers of one session in any case: a case that is rare on the whole reaches further than all of them taken together.</summary>
    private static int MostTransfers(IReadOnlyList<(double Weight, ImmutableArray<Counts> Embryos)> embryos, IReadOnlyList<(double Weight, ImmutableArray<Counts?> Recipients)> recipients) =>
        (from made in embryos
         from accepted in recipients
         from session in Enumerable.Range(0, made.Embryos.Length)
         select Math.Min(made.Embryos[session].Most, accepted.Recipients[session]?.Most ?? made.Embryos[session].Most)).Max();

    /// <summary>What is paid for the pregnancies of none, one, two ... transfers, case by case of their rate.</summary>
    private IReadOnlyList<(double Weight, Counts[] Paid)> Pregnancies(Forecast forecast, int most)
    {
        var rate = forecast.Chain.AfterTransfer.FirstOrDefault(one => one.To == Stage.Pregnant)?.Rate;
        return _pregnancy > 0 && rate is { } share
            ? [.. StandIns.ForRate(share, 5).Select(@case => (@case.Weight, Counts.OneByOne(most, new(@case.Value)).Select(held => On(held, _pregnancy)).ToArray()))]
            : [(1, [.. Enumerable.Repeat(Counts.Exactly(0), most + 1)])];
    }

    /// <summary>One session. Embryos beyond all that its recipients can carry are paid for, and tell nothing more of the transfers.</summary>
    private Counts OfSession(Counts embryos, Counts? recipients, Counts[] paid)
    {
        var most = Math.Min(embryos.Most, recipients?.Most ?? embryos.Most);
        var within = new Ladder(_step, (most * (_embryo + _surplus + _transfer)) + (paid[^1].Most * _step));
        for (var used = 0; used <= most && embryos.Least <= most; used++)
        {
            var ladder = new Ladder(_step, most * (_embryo + _surplus + _transfer));
            for (var made = Math.Max(used, embryos.Least); made <= (recipients is null ? used : most); made++)
            {
                ladder.Add((made * _embryo) + (used * _transfer) + ((made - used) * _surplus), embryos.Exact(made) * (recipients is null ? 1 : used == made ? recipients.AtLeast(used) : recipients.Exact(used)));
            }

            within.Add(ladder, paid[used]);
        }

        if (recipients is null || embryos.Most <= most)
        {
            return within.Counts!;
        }

        var (beyond, carried) = (new Ladder(_step, (embryos.Most * _embryo) + ((embryos.Most - most) * _surplus)), new Ladder(_step, (most * (_surplus + _transfer)) + (paid[^1].Most * _step)));
        for (var made = most + 1; made <= embryos.Most; made++)
        {
            beyond.Add((made * _embryo) + ((made - most) * _surplus), embryos.Exact(made));
        }

        for (var used = recipients.Least; used <= recipients.Most; used++)
        {
            var ladder = new Ladder(_step, most * (_surplus + _transfer));
            ladder.Add((used * _transfer) + ((most - used) * _surplus), recipients.Exact(used));
            carried.Add(ladder, paid[used]);
        }

        var more = beyond.Counts!.Plus(carried.Counts!);
        return within.Counts is { } fewer ? Counts.Mixed([(1 - embryos.AtLeast(most + 1), fewer), (embryos.AtLeast(most + 1), more)]) : more;
    }

    private Counts On(Counts counts, double each)
    {
        var ladder = new Ladder(_step, counts.Most * each);
        for (var count = 0; count <= counts.Most; count++)
        {
            ladder.Add(count * each, counts.Exact(count));
        }

        return ladder.Counts!;
    }

    /// <summary>Amounts on the rungs of a ladder; one between two rungs is shared out so that the average stays.</summary>
    private sealed class Ladder(double step, double most)
    {
        private readonly double[] _chances = new double[(int)(most / step) + 3];

        /// <summary>What was added, rung by rung.</summary>
        public double[] Chances => _chances;

        /// <summary>The chances of every rung; null where nothing was added.</summary>
        public Counts? Counts => _chances.AsSpan().ContainsAnyExcept(0) ? new(_chances) : null;

        public void Add(double amount, double chance)
        {
            var place = amount / step;
            var rung = (int)place;
            _chances[rung] += chance * (1 - (place - rung));
            _chances[rung + 1] += chance * (place - rung);
        }

        /// <summary>So much of other rungs, so many rungs higher.</summary>
        public void Add(double[] chances, int rungs, double times)
        {
            if (times > 0)
            {
                Rows.Add(_chances.AsSpan(rungs), chances, times);
            }
        }

        /// <summary>All of another, each amount with more besides.</summary>
        public void Add(Ladder other, Counts more)
        {
            for (var rung = 0; rung < other._chances.Length; rung++)
            {
                if (other._chances[rung] > 0)
                {
                    Rows.Add(_chances.AsSpan(rung), more.Chances, other._chances[rung]);
                }
            }
        }
    }
}
