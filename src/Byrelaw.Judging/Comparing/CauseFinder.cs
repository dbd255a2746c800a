namespace Byrelaw.Judging.Comparing;

/// <summary>Finds out by judging which changes make the difference for an animal: each alone, all but each, and what lies between.</summary>
internal sealed class CauseFinder(Trials trials, IReadOnlyList<Change> changes)
{
    private readonly ChangeSet _all = ChangeSet.All(changes.Count);

    public Cause Find((string List, string Number) who)
    {
        var (was, now) = (trials.ToldWith(ChangeSet.None, who), trials.ToldWith(_all, who));

        // What changes nothing alone and is not missed among all may still matter in between; then all are tried.
        var likely = new ChangeSet([.. _all.Members.Where(change => trials.ToldWith(ChangeSet.Of(change), who) != was || trials.ToldWith(_all.Without(change), who) != now)]);
        var fewest = Fewest(trials.ToldWith(likely, who) == now ? likely : _all, who, now);
        var spare = fewest.Members.Where(change => trials.ToldWith(_all.Without(change), who) == now).ToList();
        return new Cause(
            Named(fewest),
            [.. fewest.Members.Select(change => trials.ToldWith(ChangeSet.Of(change), who) != was)],
            spare.Count == 0 ? [] : Named(Fewest(_all.Without(spare[0]), who, now)));
    }

    /// <summary>Takes away whatever is not needed, until each of the rest is: what is needed beside one change need not be beside others.</summary>
    private ChangeSet Fewest(ChangeSet from, (string List, string Number) who, Told? now)
    {
        while (true)
        {
            var spare = from.Members.Where(change => trials.ToldWith(from.Without(change), who) == now).Take(1).ToList();
            if (spare.Count == 0)
            {
                return from;
            }

            from = from.Without(spare[0]);
        }
    }

    private ImmutableArray<Change> Named(ChangeSet set) => [.. set.Members.Select(change => changes[change])];
}
