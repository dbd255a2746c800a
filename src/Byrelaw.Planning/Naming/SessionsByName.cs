namespace Byrelaw.Planning.Naming;

/// <summary>What a season's numbers are worked out from, by name and session by session: the donors, the methods, the cows and heifers who are named.</summary>
/// <param name="Sessions">Those that are not over, in order.</param>
/// <param name="Heifers">How much of the recipients are heifers.</param>
public sealed record SessionsByName(ImmutableArray<Session> Sessions, HeiferShare Heifers)
{
    /// <summary>Counts them.</summary>
    /// <param name="named">Every session that is not over.</param>
    /// <param name="ifAllPass">Whether those asked about are counted too, donors and recipients, as if all of it turned out well.</param>
    /// <returns>Null where there is no session.</returns>
    public static SessionsByName? Of(ImmutableArray<NamedSession> named, bool ifAllPass)
    {
        if (named.IsEmpty || named.All(session => session.Methods.IsEmpty))
        {
            return null;
        }

        var notUsed = new Dictionary<int, double>();
        return new([.. named.Select(session => Of(session, ifAllPass, notUsed))], HeifersAmong(named, ifAllPass));
    }

    private static Session Of(NamedSession session, bool ifAllPass, Dictionary<int, double> notUsed)
    {
        var aims = session.Session.Programme.Aims;
        var donors = session.Session.IsStopped ? 0 : aims.Embryos == EmbryoOrigin.Frozen ? aims.InTheTank
            : session.Session.Donors is { } list ? list.Count(Answer.Ready) + list.Count(Answer.OnCourse) + (ifAllPass ? list.Count(Answer.Ask) : 0) : 0;
        var animals = ifAllPass ? session.Named.Concat(session.ToAsk) : session.Named;
        ImmutableArray<Treated> treated =
        [
            .. from method in session.Methods
               where !method.Method.IsNatural
               let count = animals.Count(animal => animal.Method == method.Method.Name)
               where count > 0
               select new Treated(new Preparing(method.Method.Name, Uses.Of(method)), count),
            .. Watched(session, ifAllPass ? session.Watched.AddRange(session.WatchedIfKnown) : session.Watched, notUsed),
        ];

        // Nobody is not the same as nobody asked for: without recipients no embryo finds one.
        return new(donors, treated.IsEmpty ? [new(new Preparing(session.Methods[0].Method.Name, Uses.Of(session.Methods[0])), 0)] : treated);
    }

    /// <summary>Those who are watched: in a later session by the chance that they were not used before.</summary>
    private static IEnumerable<Treated> Watched(NamedSession session, ImmutableArray<NamedAnimal> watched, Dictionary<int, double> notUsed)
    {
        if (watched.IsEmpty || session.Methods.FirstOrDefault(method => method.Method.IsNatural) is not { } natural)
        {
            yield break;
        }

        // So many fewer, and not a lower share: one method has one share in all sessions, or the forecast would have to try every share beside every other.
        var used = Uses.Chain(natural, session.Session.Rulebook.Plans.Assume(AssumedQuantity.RecipientsCycling)?.Share?.ToRate()).Used;
        var still = watched.Sum(animal => notUsed.GetValueOrDefault(animal.Animal, 1));
        yield return new Treated(new Preparing(natural.Method.Name, used), (int)Math.Round(still, MidpointRounding.AwayFromZero));
        foreach (var animal in watched)
        {
            notUsed[animal.Animal] = notUsed.GetValueOrDefault(animal.Animal, 1) * (1 - used.Share);
        }
    }

    private static HeiferShare HeifersAmong(ImmutableArray<NamedSession> named, bool ifAllPass)
    {
        var sorts = named.SelectMany(session =>
        {
            var of = session.Session.Recipients!.Animals.ToDictionary(animal => animal.Animal, animal => animal.Sort);
            return (ifAllPass ? session.Named.Concat(session.ToAsk) : session.Named).Select(animal => of.GetValueOrDefault(animal.Animal, AnimalSort.NotKnown));
        }).ToList();
        if (sorts.Count == 0)
        {
            // Where nobody is named it does not matter; the list's own share keeps the chain's rates what they are elsewhere on the page.
            return HeiferShare.Of(ListStanding.Of(named[0].Session.Recipients!));
        }

        var heifers = sorts.Count(sort => sort == AnimalSort.Heifer);
        var either = sorts.Count(sort => sort is AnimalSort.NotKnown or AnimalSort.SexNotKnown);
        return new((double)heifers / sorts.Count, (double)(heifers + either) / sorts.Count);
    }
}
