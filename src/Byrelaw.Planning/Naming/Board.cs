namespace Byrelaw.Planning.Naming;

/// <summary>The places of all sessions, and who has them: first who is begun or booked, then who is sure, then who is to be asked about.</summary>
internal sealed class Board
{
    private readonly int?[] _wanted;
    private readonly int[] _booked;
    private readonly int[] _sure;
    private readonly int[] _asked;
    private readonly List<BookedAndOut>[] _bookedAndOut;
    private readonly Dictionary<int, OnOpenSheet> _onSheets = [];

    /// <param name="all">Who may have a place.</param>
    /// <param name="wanted">How many each session wants; null where nobody says.</param>
    public Board(SessionCandidates all, int?[] wanted)
    {
        (All, _wanted) = (all, wanted);
        (_booked, _sure, _asked) = (Nowhere(), Nowhere(), Nowhere());
        _bookedAndOut = [.. all.Sessions.Select(_ => new List<BookedAndOut>())];
    }

    /// <summary>Who may have a place.</summary>
    public SessionCandidates All { get; }

    /// <summary>How many a session wants; null where nobody says.</summary>
    public int? Wanted(int session) => _wanted[session];

    /// <summary>Whoever was to begin by a sheet that is still open keeps her place, as one to ask about; as many as are wanted, for spares had none.</summary>
    public void KeepThoseOnOpenSheets(ImmutableArray<OnOpenSheet> sheets)
    {
        foreach (var row in sheets)
        {
            var (one, session) = (All.Of(row.Animal), All.Sessions.ToList().FindIndex(session => session.Number == row.Session));
            var kept = _onSheets.Values.Count(other => other.Session == row.Session) + All.Where(other => All.IsBegunFor(other, session)).Count();
            if (one >= 0 && !_onSheets.ContainsKey(one) && All.BegunOf(one) is null && !(kept >= _wanted[session]))
            {
                (_onSheets[one], _booked[one]) = (row, session);
                All.Keep(one, session, All.Methods(session).ToList().FindIndex(method => method.Method.Name == row.Method), new StandingOf(Standing.ToAsk, FailedCheck.None));
            }
        }
    }

    /// <summary>The sheet that she stands on, where she keeps her place by it; else null.</summary>
    public OnOpenSheet? SheetOf(int one) => _onSheets.GetValueOrDefault(one);

    /// <summary>Whoever is booked has her place if she is sure of it, or is asked about for it; a booking opens no gate.</summary>
    public void Book()
    {
        foreach (var booking in All.Sessions.IsEmpty ? [] : All.Sessions[0].Programme.Aims.Bookings)
        {
            var session = All.Sessions.ToList().FindIndex(one => one.Number == booking.Session);
            var one = All.Of(All.Sessions[0].Judge.Herd.Find(booking.Animal));
            if (session < 0 || (one >= 0 && (All.BegunOf(one) is not null || _onSheets.ContainsKey(one))))
            {
                // Of one who is begun the book says more than the booking, and of one on a sheet the sheet.
                continue;
            }

            var method = All.Methods(session).ToList().FindIndex(other => other.Method.Name == booking.Method);
            var standing = one < 0 || method < 0 ? new StandingOf(Standing.Out, FailedCheck.Carrying) : All.Methods(session)[method].Animals[All.AnimalAt(one)];
            if (standing.Standing == Standing.Out)
            {
                _bookedAndOut[session].Add(new(booking, standing.Failed));
            }

            if (one >= 0)
            {
                // Who is booked and out is not named elsewhere either: a person meant her for that session.
                _booked[one] = session;
                All.Keep(one, session, standing.Standing == Standing.Out ? -1 : method, standing.Standing == Standing.Out ? default : standing);
            }
        }
    }

    /// <summary>Sure animals to places: most places filled in the first session, in the second, ...; most points of all named, each by the most she has in a session of hers;
    /// most points in the first session, in the second, ...; the smallest numbers, session by session.</summary>
    public void NameTheSure()
    {
        var count = All.Sessions.Length;
        int[] places = [.. Enumerable.Range(0, count).Select(session => Places(session, All.Where(one => HasPlaceAnyhow(one, session) || (_onSheets.ContainsKey(one) && _booked[one] == session)).Count()))];
        Assign(_sure, places, (2 * count) + 1, (one, session) => !CanBeNamed(one, session) ? null : Numbers((2 * count) + 1, parts =>
        {
            parts[session] = 1;
            parts[count] = Enumerable.Range(0, count).Where(other => CanBeNamed(one, other)).Max(other => All.WholePointsOf(one, other));
            parts[count + 1 + session] = All.WholePointsOf(one, session);
        }));
    }

    /// <summary>The same into the places still empty, first those that miss fewest records.</summary>
    public void FillWithThoseToAsk()
    {
        var count = All.Sessions.Length;
        int[] places = [.. Enumerable.Range(0, count).Select(session => Places(session, All.Where(one => IsNamed(one, session) || IsAskedByBooking(one, session)).Count()))];
        Assign(_asked, places, 3 * count, (one, session) => !CanBeAsked(one, session) ? null : Numbers(3 * count, parts =>
        {
            parts[session] = 1;
            parts[count + session] = -All.Stands(one, session).Missing;
            parts[(2 * count) + session] = All.WholePointsOf(one, session);
        }));
    }

    /// <summary>Whether she has a place.</summary>
    public bool IsNamed(int one, int session) => _sure[one] == session || HasPlaceAnyhow(one, session);

    /// <summary>Whether she is asked about for a place that is still empty, or for the one that she is booked for.</summary>
    public bool IsAsked(int one, int session) => _asked[one] == session || IsAskedByBooking(one, session);

    /// <summary>Whether she is asked about for any place that is still empty.</summary>
    public bool IsAskedAnywhere(int one) => _asked[one] >= 0;

    /// <summary>Whether she could be named for a session.</summary>
    public bool CanBeNamed(int one, int session) => _booked[one] < 0 && All.BegunOf(one) is null && All.IsTreated(one, session) && All.Stands(one, session).Standing == Standing.Sure;

    /// <summary>Whether she has a place anywhere, is begun or is booked.</summary>
    public bool IsPlaced(int one) => All.BegunOf(one) is not null || _booked[one] >= 0 || _sure[one] >= 0;

    /// <summary>Whether the programme books her for a session.</summary>
    public bool IsBooked(int one, int session) => _booked[one] == session && !_onSheets.ContainsKey(one);

    /// <summary>Who is booked for a session and not named.</summary>
    public ImmutableArray<BookedAndOut> BookedAndOutOf(int session) => [.. _bookedAndOut[session]];

    private int[] Nowhere()
    {
        var at = new int[All.Count];
        Array.Fill(at, -1);
        return at;
    }

    private void Assign(int[] at, int[] places, int length, Func<int, int, Gain?> gain)
    {
        var gains = new Gain?[All.Count][];
        for (var one = 0; one < gains.Length; one++)
        {
            gains[one] = [.. Enumerable.Range(0, All.Sessions.Length).Select(session => gain(one, session))];
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
    private int Places(int session, int taken) => _wanted[session] is { } wanted ? Math.Max(0, wanted - taken) : All.Count;

    private bool CanBeAsked(int one, int session) => _wanted[session] is not null && _booked[one] < 0 && All.BegunOf(one) is null && _sure[one] < 0
        && All.IsTreated(one, session) && All.Stands(one, session).Standing == Standing.ToAsk;

    /// <summary>Whoever is begun never moves, and who is booked and sure has her place.</summary>
    private bool HasPlaceAnyhow(int one, int session) => All.BegunOf(one) is not null
        ? All.IsBegunFor(one, session) : _booked[one] == session && All.Stands(one, session).Standing == Standing.Sure;

    private bool IsAskedByBooking(int one, int session) => _booked[one] == session && All.Stands(one, session).Standing == Standing.ToAsk;
}
