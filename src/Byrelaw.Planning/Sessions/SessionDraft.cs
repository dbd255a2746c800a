namespace Byrelaw.Planning.Sessions;

/// <summary>Draws up a programme's lists for each of its sessions, on that session's own days, donors as planned.</summary>
public static class SessionDraft
{
    /// <summary>Every list of every session that is not over by the day the records reach. One day that is asked for is judged as it is, once.</summary>
    /// <param name="rulebook">With a programme.</param>
    /// <param name="herd">Its records.</param>
    /// <param name="knownOn">The day whose knowledge this is; null for today's.</param>
    /// <param name="on">Judge on this day instead of any session's; null for the sessions.</param>
    /// <param name="session">Only this session; null for all.</param>
    /// <param name="progress">Told how many animals are done, of how many.</param>
    /// <returns>The lists of the first session, then those of the second, ...; a programme that is wholly over is judged for its last session, as of then.</returns>
    public static Draft Of(Rulebook rulebook, Herd herd, LocalDate? knownOn, LocalDate? on = null, int? session = null, IProgress<(int Done, int Of)>? progress = null)
    {
        ArgumentNullException.ThrowIfNull(rulebook);
        ArgumentNullException.ThrowIfNull(herd);
        var sessions = Session.Of(rulebook.Programme!);
        ImmutableArray<Session> asked = [.. session is null ? NotOver(sessions, herd) : sessions.Where(one => one.Number == session)];
        if (on is not null || asked.IsEmpty)
        {
            return new Judge(rulebook, herd, knownOn).JudgeAll(on, progress);
        }

        var inTurn = new SessionsInTurn(rulebook, herd, knownOn, herd.KnownDay);
        foreach (var before in NotOver(sessions, herd).TakeWhile(one => one.Number < asked[0].Number))
        {
            inTurn.Pass(before);
        }

        var (done, all) = (0, progress is null || asked.Length == 1 ? 0 : asked.Sum(one => new Judge(SessionsInTurn.RulesOf(rulebook, one), herd, knownOn).CountAll()));
        var lists = ImmutableArray.CreateBuilder<ListJudgement>();
        foreach (var one in asked)
        {
            var part = asked.Length == 1 ? progress : progress is null ? null : new Part(progress, done, all);
            var judged = inTurn.Judge(one, progress: part).Lists;
            lists.AddRange(judged.Select(list => list with { Session = one.Number }));
            done += judged.Sum(list => list.Animals.Length);
        }

        return new Draft(rulebook, herd, knownOn, lists.ToImmutable());
    }

    /// <summary>One animal in every session of the programme, in order, each on its own days.</summary>
    /// <param name="rulebook">With a programme.</param>
    /// <param name="herd">Its records.</param>
    /// <param name="animal">Her place in the herd.</param>
    /// <param name="knownOn">The day whose knowledge this is; null for today's.</param>
    /// <param name="asPlanned">Whether a donor is taken to be collected as planned; not where something else is supposed of her.</param>
    public static ImmutableArray<Draft> OfHer(Rulebook rulebook, Herd herd, int animal, LocalDate? knownOn, bool asPlanned = true)
    {
        ArgumentNullException.ThrowIfNull(rulebook);
        ArgumentNullException.ThrowIfNull(herd);
        var inTurn = new SessionsInTurn(rulebook, herd, knownOn, asPlanned ? herd.KnownDay : LocalDate.MaxIsoValue);
        return [.. Session.Of(rulebook.Programme!).Select(session => inTurn.JudgeHer(animal, session))];
    }

    private static ImmutableArray<Session> NotOver(ImmutableArray<Session> sessions, Herd herd)
    {
        ImmutableArray<Session> notOver = [.. sessions.Where(session => !herd.ReachesADay || session.FinalTransfer >= herd.KnownDay)];
        return notOver.IsEmpty && !sessions.IsEmpty ? [sessions[^1]] : notOver;
    }

    /// <summary>Progress of one session among several.</summary>
    private sealed class Part(IProgress<(int Done, int Of)> whole, int before, int all) : IProgress<(int Done, int Of)>
    {
        public void Report((int Done, int Of) value) => whole.Report((before + value.Done, all));
    }
}
