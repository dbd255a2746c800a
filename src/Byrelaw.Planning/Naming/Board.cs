namespace Byrelaw.Planning.Naming;

/// <summary>The places of all sessions, and who has them: first who is booked, then who is sure, then who is to be asked about.</summary>
internal sealed class Board
{
    /// <summary>Points may be parts of one; they are compared as whole numbers.</summary>
    private const double WholePoints = 1_000_000_000;

    private readonly ImmutableArray<JudgedSession> _sessions;
    private readonly ImmutableArray<MethodChecked>[] _methods;
    private readonly Herd _herd;
    private readonly Dictionary<int, double>[] _points;
    private readonly int?[] _wanted;
    private readonly int[] _animals;
    private readonly (int Method, StandingOf Standing)[][] _hers;
    private readonly int[] _booked;
    private readonly int[] _sure;
    private readonly int[] _asked;
    private readonly List<BookedAndOut>[] _bookedAndOut;
    private readonly Dictionary<int, BegunAnimal> _begun;

    public Board(
        ImmutableArray<JudgedSession> sessions, ImmutableArray<MethodChecked>[] methods, Herd herd, Dictionary<int, double>[] points, HashSet<int> notRecipients, int?[] wanted,
        ImmutableArray<BegunAnimal> begun = default)
    {
        (_sessions, _methods, _herd, _points, _wanted) = (sessions, methods, herd, points, wanted);
        _begun = begun.IsDefault ? [] : begun.ToDictionary(one => one.Animal);
        _animals = [.. points.SelectMany(one => one.Keys).Concat(_begun.Keys).Distinct().Where(animal => _begun.ContainsKey(animal) || !notRecipients.Contains(animal)).Order()];
        _hers = [.. _animals.Select(animal => methods.Select(session => HersIn(session, animal)).ToArray())];
        (_booked, _sure, _asked) = (Nowhere(), Nowhere(), Nowhere());
        _bookedAndOut = [.. sessions.Select(_ => new List<BookedAndOut>())];
    }

    /// <summary>Whoever is booked has her place if she is sure of it, or is asked about for it; a booking opens no gate.</summary>
    public void Book()
    {
        foreach (var booking in _sessions.IsEmpty ? [] : _sessions[0].Programme.Aims.Bookings)
        {
            var session = _sessions.ToList().FindIndex(one => one.Number == booking.Session);
            var place = _herd.Find(booking.Animal) is var animal and >= 0 ? Array.IndexOf(_animals, animal) : -1;
            if (session < 0 || (place >= 0 && _begun.ContainsKey(_animals[place])))
            {
                // Of one who is begun the book says more than the booking.
                continue;
            }

            var method = _methods[session].ToList().FindIndex(one => one.Method.Name == booking.Method);
            var standing = place < 0 || method < 0 ? new StandingOf(Standing.Out, FailedCheck.Carrying) : _methods[session][method].Animals[_animals[place]];
            if (standing.Standing == Standing.Out)
            {
                _bookedAndOut[session].Add(new(booking, standing.Failed));
                if (place >= 0)
                {
                    // Who is booked and out is not named elsewhere either: a person meant her for that session.
                    _booked[place] = session;
                    _hers[place] = [.. _hers[place].Select(_ => (-1, default(StandingOf)))];
                }

                continue;
            }

            _booked[place] = session;
            _hers[place] = [.. _hers[place].Select((hers, i) => i == session ? (method, standing) : (-1, default))];
        }
    }

    /// <summary>Sure animals to places: most places filled in the first session, in the second, ...; most points of all named, each by the most she has in a session of hers;
    /// most points in the first session, in the second, ...; the smallest numbers, session by session.</summary>
    public void NameTheSure()
    {
        var count = _sessions.Length;
        int[] places = [.. Enumerable.Range(0, count).Select(session => Places(session, Where(animal => HasPlaceAnyhow(animal, session)).Count()))];
        Assign(_sure, places, (2 * count) + 1, (animal, session) => !CanBeNamed(animal, session) ? null : Numbers((2 * count) + 1, parts =>
        {
            parts[session] = 1;
            parts[count] = Enumerable.Range(0, count).Where(other => CanBeNamed(animal, other)).Max(other => PointsOf(animal, other));
            parts[count + 1 + session] = PointsOf(animal, session);
        }));
    }

    /// <summary>The same into the places still empty, first those that miss fewest records.</summary>
    public void FillWithThoseToAsk()
    {
        var count = _sessions.Length;
        int[] places = [.. Enumerable.Range(0, count).Select(session => Places(session, Enumerable.Range(0, _animals.Length).Count(animal => IsNamed(animal, session) || IsAskedByBooking(animal, session))))];
        Assign(_asked, places, 3 * count, (animal, session) => !CanBeAsked(animal, session) ? null : Numbers(3 * count, parts =>
        {
            parts[session] = 1;
            parts[count + session] = -_hers[animal][session].Standing.Missing;
            parts[(2 * count) + session] = PointsOf(animal, session);
        }));
    }

    /// <summary>What came of it.</summary>
    public ImmutableArray<NamedSession> Sessions() => [.. _sessions.Select((session, i) => new NamedSession(session, _methods[i])
    {
        Wanted = _wanted[i],
        BegunAndNotNamed = [.. _begun.Values.Where(one => (one.Sessions.Contains(session.Number) || (one.Sessions.IsEmpty && i == 0)) && !IsBegun(one, session.Number))],
        Named = [.. Where(animal => IsNamed(animal, i)).Select(animal => Named(animal, i) with { Before = [.. Before(animal, i)] })],
        ToAsk = [.. Where(animal => _asked[animal] == i || IsAskedByBooking(animal, i)).Select(animal => Named(animal, i))],
        Spares = [.. Where(animal => IsSpare(animal) && FirstSure(animal) == i).OrderByDescending(animal => PointsOf(animal, i)).Select(animal => Named(animal, i))],
        Watched = [.. Where(animal => IsWatched(animal, i, Standing.Sure)).Select(animal => Watched(animal, i))],
        WatchedIfKnown = [.. Where(animal => IsWatched(animal, i, Standing.ToAsk)).Select(animal => Watched(animal, i))],
        BookedAndOut = [.. _bookedAndOut[i]],
    })];

    /// <summary>Her method is the first by which she is sure, else the first by which she is to be asked about.</summary>
    private static (int Method, StandingOf Standing) HersIn(ImmutableArray<MethodChecked> methods, int animal)
    {
        var best = (Method: -1, Standing: default(StandingOf));
        for (var i = 0; i < methods.Length; i++)
        {
            if (methods[i].Animals[animal] is var standing && standing.Standing > best.Standing.Standing)
            {
                best = (i, standing);
            }
        }

        return best;
    }

    private IEnumerable<int> Where(Func<int, bool> holds) => Enumerable.Range(0, _animals.Length).Where(holds);

    private int[] Nowhere()
    {
        var at = new int[_animals.Length];
        Array.Fill(at, -1);
        return at;
    }

    private void Assign(int[] at, int[] places, int length, Func<int, int, Gain?> gain)
    {
        var gains = new Gain?[_animals.Length][];
        for (var animal = 0; animal < gains.Length; animal++)
        {
            gains[animal] = [.. Enumerable.Range(0, _sessions.Length).Select(session => gain(animal, session))];
        }

        Assignment.Best(gains, places, Gain.Nothing(length)).CopyTo(at, 0);
    }

    private static Gain? Numbers(int length, Action<long[]> fill)
    {
        var parts = new long[length];
        fill(parts);
        return new Gain(parts);
    }

    /// <summary>Where nobody says how many are wanted, every sure animal has a place and nobody is asked about.</summary>
    private int Places(int session, int taken) => _wanted[session] is { } wanted ? Math.Max(0, wanted - taken) : _animals.Length;

    private Standing Stands(int animal, int session) => _hers[animal][session].Standing.Standing;

    private bool IsTreated(int animal, int session) => _hers[animal][session].Method is var method and >= 0 && !_methods[session][method].Method.IsNatural;

    private bool CanBeNamed(int animal, int session) => _booked[animal] < 0 && !_begun.ContainsKey(_animals[animal]) && IsTreated(animal, session) && Stands(animal, session) == Standing.Sure;

    private bool CanBeAsked(int animal, int session) =>
        _wanted[session] is not null && _booked[animal] < 0 && !_begun.ContainsKey(_animals[animal]) && _sure[animal] < 0 && IsTreated(animal, session) && Stands(animal, session) == Standing.ToAsk;

    private bool IsNamed(int animal, int session) => _sure[animal] == session || HasPlaceAnyhow(animal, session);

    /// <summary>Whoever is begun never moves, and who is booked and sure has her place.</summary>
    private bool HasPlaceAnyhow(int animal, int session) => _begun.TryGetValue(_animals[animal], out var begun)
        ? IsBegun(begun, _sessions[session].Number) : _booked[animal] == session && Stands(animal, session) == Standing.Sure;

    private static bool IsBegun(BegunAnimal begun, int session) => begun.Session == session && begun.State == BegunState.GoesOn;

    private bool IsAskedByBooking(int animal, int session) => _booked[animal] == session && Stands(animal, session) == Standing.ToAsk;

    private bool IsPlaced(int animal) => _begun.ContainsKey(_animals[animal]) || _booked[animal] >= 0 || _sure[animal] >= 0;

    private bool IsSpare(int animal) => !IsPlaced(animal) && FirstSure(animal) >= 0;

    /// <summary>The first session that she could be named for; -1 for none.</summary>
    private int FirstSure(int animal) => Array.FindIndex(_hers[animal], hers => hers.Standing.Standing == Standing.Sure) is var first and >= 0
        ? Enumerable.Range(first, _sessions.Length - first).FirstOrDefault(session => CanBeNamed(animal, session), -1) : -1;

    /// <summary>Written first, natural heat keeps those it suits off treatment; anywhere else it watches whoever is left over.</summary>
    private bool IsWatched(int animal, int session, Standing standing) =>
        Natural(session) is { } natural && !IsPlaced(animal) && _asked[animal] < 0 && natural.Animals[_animals[animal]].Standing == standing;

    private MethodChecked? Natural(int session) => _methods[session].FirstOrDefault(method => method.Method.IsNatural);

    private NamedAnimal Watched(int animal, int session) =>
        new(_animals[animal], _herd.Numbers[_animals[animal]], Natural(session)!.Method.Name, Natural(session)!.Day, _points[session].GetValueOrDefault(_animals[animal]));

    private long PointsOf(int animal, int session) => (long)Math.Round(WholePoints * _points[session].GetValueOrDefault(_animals[animal]));

    private NamedAnimal Named(int animal, int session)
    {
        if (_begun.TryGetValue(_animals[animal], out var begun))
        {
            return new(_animals[animal], _herd.Numbers[_animals[animal]], begun.Method.Name, begun.Start, _points[session].GetValueOrDefault(_animals[animal])) { IsBegun = true };
        }

        var method = _methods[session][Math.Max(0, _hers[animal][session].Method)];
        return new(_animals[animal], _herd.Numbers[_animals[animal]], method.Method.Name, method.Days.Start, _points[session].GetValueOrDefault(_animals[animal]))
        {
            IsBooked = _booked[animal] == session,
        };
    }

    /// <summary>The earlier sessions that she could serve too, and who has their places.</summary>
    private IEnumerable<TakenPlaces> Before(int animal, int session)
    {
        for (var before = 0; before < session; before++)
        {
            if (CanBeNamed(animal, before))
            {
                var there = Where(other => IsNamed(other, before)).ToList();
                yield return new(_sessions[before].Number, there.Count, there.Count(other => !Enumerable.Range(0, _sessions.Length).Any(session => session != before && CanBeNamed(other, session))));
            }
        }
    }
}
