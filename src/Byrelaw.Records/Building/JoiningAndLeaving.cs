namespace Byrelaw.Records.Building;

/// <summary>Rows of kinds that join the herd or leave it, of single animals, mobs and the herd.</summary>
internal sealed class JoiningAndLeaving(Vocabulary vocabulary, AnimalRow[] animals, EventStage[] stages, EventStage expanded)
{
    private readonly HerdEffect[] _effects = [.. vocabulary.ById.Select(kind => (kind as EventKind)?.Effect ?? HerdEffect.None)];
    private readonly bool[] _forGood = [.. vocabulary.Kinds.Select(kind => kind is EventKind { IsForGood: true })];

    /// <summary>Who is in the herd by the rows so far, and the gaps given.</summary>
    public MembershipBuilder Membership(IReadOnlyCollection<Gap> gaps) => new(animals, Rows(), _effects, _forGood, gaps);

    /// <summary>Takes what such rows of mobs and of the herd mean for each animal.</summary>
    /// <param name="groups">All rows of mobs and of the herd.</param>
    /// <param name="mobs">Who is in which mob.</param>
    /// <param name="presence">Who is in the herd, by rows about single animals.</param>
    /// <param name="gaps">Takes what is in doubt.</param>
    /// <returns>The others.</returns>
    public List<GroupRow> Expand(List<GroupRow> groups, MobStays mobs, Membership presence, GapTable gaps)
    {
        var doubts = new List<Gap>();
        GroupEvents.Expand(
            groups.Where(row => _effects[row.Kind] != HerdEffect.None), mobs,
            (animal, row) => _effects[row.Kind] == HerdEffect.Joins ? BornBy(animal, row.Day) : BeforeOrOn(presence, animal, row.Day),
            null,
            (animal, row) => expanded.Events[row.Kind].Add(new Staged<Nothing>(animal, row.Day, row.Line, default)),
            doubts.Add);
        gaps.Add(doubts);
        gaps.AddDoubles(expanded, Enumerable.Range(0, _effects.Length).Where(kind => _effects[kind] != HerdEffect.None));
        return [.. groups.Where(row => _effects[row.Kind] == HerdEffect.None)];
    }

    /// <summary>Rows of joining and leaving kinds in one run; the result is the kind's id.</summary>
    private SortedRun<int> Rows()
    {
        var rows = new ChunkedList<Staged<int>>();
        for (var kind = 0; kind < _effects.Length; kind++)
        {
            if (_effects[kind] == HerdEffect.None)
            {
                continue;
            }

            foreach (var part in EventsOf(kind))
            {
                for (var chunk = 0; chunk < part.ChunkCount; chunk++)
                {
                    foreach (ref var row in part.Chunk(chunk))
                    {
                        rows.Add(new Staged<int>(row.Animal, row.Day, row.Line, kind));
                    }
                }
            }
        }

        return SortedRun<int>.Of(animals.Length, [rows]);
    }

    /// <summary>Whoever joins need only be born.</summary>
    private Presence BornBy(int animal, int day) =>
        day >= animals[animal].BornLast || animals[animal].BornFirst <= Day.Start ? Presence.In
        : day >= animals[animal].BornFirst ? Presence.NotKnown
        : Presence.Out;

    /// <summary>Whoever leaves was in the day before, or came that day.</summary>
    private static Presence BeforeOrOn(Membership presence, int animal, int day)
    {
        var (before, on) = (presence.At(animal, day - 1), presence.At(animal, day));
        return before == Presence.In || on == Presence.In ? Presence.In
            : before == Presence.Out && on == Presence.Out ? Presence.Out
            : Presence.NotKnown;
    }

    private List<ChunkedList<Staged<Nothing>>> EventsOf(int kind) => [.. stages.Append(expanded).Select(stage => stage.Events[kind])];
}
