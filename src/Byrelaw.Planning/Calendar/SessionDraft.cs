namespace Byrelaw.Planning.Calendar;

/// <summary>Draws up a programme's lists for each of its sessions, on that session's own days.</summary>
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
        var rounds = Judged(rulebook.Programme!, herd, session);
        if (on is not null || rounds.IsEmpty)
        {
            return new Judge(rulebook, herd, knownOn).JudgeAll(on, progress);
        }

        var judges = rounds.Select(round => (round.Number, Judge: new Judge(round.Number == 1 ? rulebook : rulebook with { Programme = round.Programme }, herd, knownOn))).ToList();
        var (done, all) = (0, progress is null || judges.Count == 1 ? 0 : judges.Sum(one => one.Judge.CountAll()));
        var lists = ImmutableArray.CreateBuilder<ListJudgement>();
        foreach (var (number, judge) in judges)
        {
            var before = done;
            var part = judges.Count == 1 ? progress : progress is null ? null : new Part(progress, before, all);
            var judged = judge.JudgeAll(progress: part).Lists;
            lists.AddRange(judged.Select(list => list with { Session = number }));
            done += judged.Sum(list => list.Animals.Length);
        }

        return new Draft(rulebook, herd, knownOn, lists.ToImmutable());
    }

    private static ImmutableArray<Round> Judged(Programme programme, Herd herd, int? session)
    {
        var rounds = Round.Of(programme);
        if (session is not null)
        {
            return [.. rounds.Where(round => round.Number == session)];
        }

        ImmutableArray<Round> notOver = [.. rounds.Where(round => !herd.ReachesADay || round.FinalTransfer >= herd.KnownDay)];
        return notOver.IsEmpty && !rounds.IsEmpty ? [rounds[^1]] : notOver;
    }

    /// <summary>Progress of one session among several.</summary>
    private sealed class Part(IProgress<(int Done, int Of)> whole, int before, int all) : IProgress<(int Done, int Of)>
    {
        public void Report((int Done, int Of) value) => whole.Report((before + value.Done, all));
    }
}
