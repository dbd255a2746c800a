namespace Byrelaw.Planning.Naming;

/// <summary>What a season's numbers are worked out from, by name and session by session: the donors, the methods, the cows and heifers who are named.</summary>
/// <param name="Sessions">Those that are not over, in order.</param>
/// <param name="Carriers">How much of the recipients are of which sort.</param>
public sealed record SessionsByName(ImmutableArray<SessionSize> Sessions, CarrierShares Carriers)
{
    /// <summary>Counts them.</summary>
    /// <param name="named">Every session that is not over.</param>
    /// <param name="ifAllPass">Whether those asked about are counted too, donors and recipients, as if all of it turned out well.</param>
    /// <param name="usable">Of those asked about so many turn out to be usable; all, where nothing else is said.</param>
    /// <returns>Null where there is no session.</returns>
    public static SessionsByName? Of(ImmutableArray<NamedSession> named, bool ifAllPass, double usable = 1)
    {
        if (named.IsEmpty || named.All(session => session.Methods.IsEmpty))
        {
            return null;
        }

        var notUsed = new Dictionary<int, double>();
        return new([.. named.Select(session => Of(session, ifAllPass, usable, notUsed))], CarriersAmong(named, ifAllPass));
    }

    /// <summary>A session's donors, each with a line of her own by herself; its recipients are not counted.</summary>
    /// <param name="session">Judged.</param>
    /// <param name="asked">Who is asked about, and is to be counted too.</param>
    /// <param name="usable">Of these so many turn out to be usable.</param>
    internal static SessionSize Donors(JudgedSession session, IEnumerable<int> asked, double usable = 1)
    {
        if (session.IsStopped)
        {
            return new(0, []);
        }

        var aims = session.Programme.Aims;
        if (aims.Embryos == EmbryoOrigin.Frozen)
        {
            return new(aims.InTheTank, []);
        }

        var open = asked.ToHashSet();
        var donors = session.Collected.Concat((session.Donors?.Animals ?? []).Where(donor => open.Contains(donor.Animal))).ToList();
        var own = ChainReading.Of(session.Rulebook.Plans, aims, CarrierShares.Exactly(0)).Chain?.Own ?? [];
        ImmutableArray<OwnDonor> hers =
        [
            .. from donor in donors join one in own on donor.Number equals one.Number select one with { IsAsked = open.Contains(donor.Animal) && usable < 1 },
        ];
        var general = donors.Where(donor => hers.All(one => one.Number != donor.Number)).ToList();
        var doubted = usable < 1 ? general.Count(donor => open.Contains(donor.Animal)) : 0;
        return new(general.Count - doubted, []) { DonorsAsked = doubted, Own = hers, Usable = usable };
    }

    private static SessionSize Of(NamedSession session, bool ifAllPass, double usable, Dictionary<int, double> notUsed)
    {
        var animals = ifAllPass && usable >= 1 ? session.Named.Concat(session.ToAsk) : session.Named;
        var asked = ifAllPass && usable < 1 ? session.ToAsk : [];
        ImmutableArray<Treated> treated =
        [
            .. from method in session.Methods
               where !method.Method.IsNatural
               let count = animals.Count(animal => animal.Method == method.Method.Name)
               let doubted = asked.Count(animal => animal.Method == method.Method.Name)
               where count + doubted > 0
               select new Treated(new Preparing(method.Method.Name, Uses.Of(method)), count) { Asked = doubted },
            .. Watched(session, ifAllPass && usable >= 1 ? session.Watched.AddRange(session.WatchedIfKnown) : session.Watched, notUsed),
        ];

        // Nobody is not the same as nobody asked for: without recipients no embryo finds one.
        return Donors(session.Session, ifAllPass ? session.DonorsToAsk.Select(donor => donor.Animal) : [], usable) with
        {
            Treated = treated.IsEmpty ? [new(new Preparing(session.Methods[0].Method.Name, Uses.Of(session.Methods[0])), 0)] : treated,
        };
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

    private static CarrierShares CarriersAmong(ImmutableArray<NamedSession> named, bool ifAllPass)
    {
        var sorts = named.SelectMany(session =>
        {
            var of = session.Session.Recipients!.Animals.ToDictionary(animal => animal.Animal, animal => animal.Sort);
            return (ifAllPass ? session.Named.Concat(session.ToAsk) : session.Named).Select(animal => (of.GetValueOrDefault(animal.Animal, AnimalSort.NotKnown), session.Session.Dry.Of(animal.Animal)));
        }).ToList();

        // Where nobody is named it does not matter; the list's own share keeps the chain's rates what they are elsewhere on the page.
        return sorts.Count == 0 ? CarrierShares.Of(ListStanding.Of(named[0].Session.Recipients!, named[0].Session.Dry)) : CarrierShares.Of(sorts);
    }
}
