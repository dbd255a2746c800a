using Byrelaw.Judging.Supposing;
using Byrelaw.Planning.FindingOut;
using Byrelaw.Records.Reading;

namespace Byrelaw.Planning.Naming;

/// <summary>
/// A sample by which a mob is judged leaves all of the mob open until its result is back. So whoever is named and is sure by the mob's other samples waits with the one who is
/// asked about: it is told, and where some of her days do it before any of them is treated or carries, only these are hers.
/// </summary>
internal sealed class WhoWaits
{
    private readonly ImmutableArray<NamedSession> _sessions;
    private readonly Herd _herd;
    private readonly SaidOfOthers _others;
    private readonly Dictionary<(int Kind, int Mob), ImmutableArray<Waiting>> _known = [];

    private WhoWaits(ImmutableArray<NamedSession> sessions)
    {
        _sessions = sessions;
        _herd = sessions[0].Session.Judge.Herd;
        _others = new(sessions[0].Session.Rulebook, _herd);
    }

    /// <summary>The sessions with them.</summary>
    public static ImmutableArray<NamedSession> In(ImmutableArray<NamedSession> sessions)
    {
        if (sessions.IsEmpty)
        {
            return sessions;
        }

        var all = new WhoWaits(sessions);
        return [.. sessions.Select(session => session with { ToAsk = all.Of(session.ToAsk), WatchedIfKnown = all.Of(session.WatchedIfKnown) })];
    }

    private ImmutableArray<NamedAnimal> Of(ImmutableArray<NamedAnimal> asked) =>
        [.. asked.Select(animal => animal with { ToFindOut = [.. animal.ToFindOut.Select(one => one is { Record.IsTaken: true, Days.IsEmpty: false } && _others.IsOfMobs(one.Record.Kind) ? Of(animal.Animal, one) : one)] })];

    private ToFindOut Of(int animal, ToFindOut asked)
    {
        var day = asked.Days[0].Start;
        var sampled = (asked.Record.Kind.Id, _herd.Mobs.At(animal, Day.Number(day)));
        if (!_known.TryGetValue(sampled, out var waiting))
        {
            waiting = _known[sampled] = Waiters(asked.Record, day);
        }

        if (waiting.IsEmpty)
        {
            return asked;
        }

        var inTime = DayRuns.Of(asked.Days.SelectMany(run => DayRuns.From(run.Start, run.End)).Where(one => !waiting.Any(other => other.NeedsItBetween(one, one.PlusDays(asked.Record.ResultsAfter)))));
        return asked with
        {
            Days = inTime.IsEmpty ? asked.Days : inTime,
            Waiting = [.. waiting.GroupBy(one => one.Session).Select(session => new WaitsForIt(session.Key, [.. session.Select(one => one.Number)], !inTime.IsEmpty))],
        };
    }

    /// <summary>Whoever is named and is not sure any more if the sample is taken and nothing is known of it: judged again, as if it were so.</summary>
    private ImmutableArray<Waiting> Waiters(AskedRecord record, LocalDate day)
    {
        var waiting = ImmutableArray.CreateBuilder<Waiting>();
        foreach (var session in _sessions.Where(session => session.Named.Any(animal => !animal.IsBegun)))
        {
            if (SupposedFarm.Of(session.Session.Rulebook, _herd)?.Judge(new Supposition { Records = new Supposed { Rows = [.. record.Of.Select(number => new SupposedRow(day, number, record.Kind.Name, "pending"))] } }) is not { } judge)
            {
                continue;
            }

            foreach (var method in session.Methods)
            {
                var gates = MethodChecked.GatesOf(session.Session, method.Method, method.Day);
                var check = new GateCheck(judge, gates);
                waiting.AddRange(session.Named.Where(animal => !animal.IsBegun && animal.Method == method.Method.Name && !check.IsSure(animal.Animal)).Select(animal => new Waiting(session.Number, animal.Number, gates)));
            }
        }

        return [.. waiting.OrderBy(one => one.Session).ThenBy(one => one.Number, AnimalNumberOrder.Instance)];
    }

    /// <summary>One who waits, and what must surely hold of her when.</summary>
    private sealed record Waiting(int Session, string Number, Gates Gates)
    {
        /// <summary>Whether she must be sure on a day from that of the sample to the last on which its result is not back.</summary>
        public bool NeedsItBetween(LocalDate taken, LocalDate back) => Gates.Lists.Any(list => taken <= list.To && list.From < back);
    }
}
