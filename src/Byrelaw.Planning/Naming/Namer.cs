namespace Byrelaw.Planning.Naming;

/// <summary>
/// Names who is made ready for which session. Nobody is named unless both checks surely hold on her own days. A sure animal never gives way to one
/// to ask; an animal has one place; the best assignment of all sessions together is found, never greedily session by session.
/// </summary>
public sealed class Namer
{
    private readonly ImmutableArray<JudgedSession> _sessions;
    private readonly ImmutableArray<MethodChecked>[] _methods;
    private readonly HashSet<int> _notRecipients;
    private readonly Dictionary<int, double>[] _points;
    private readonly ImmutableArray<BegunAnimal> _begun;
    private readonly ImmutableArray<OnOpenSheet> _onSheets;

    private Namer(ImmutableArray<JudgedSession> sessions, Draft draft, LocalDate today)
    {
        _sessions = sessions;
        _methods = [.. sessions.Select(session => session.Programme.Aims.MethodsOf(session.Rulebook.Plans)
            .Select(method => MethodChecked.Of(session, method, today)).ToImmutableArray())];
        _points = [.. sessions.Select(session => session.Recipients!.Animals.ToDictionary(animal => animal.Animal, animal => animal.Score))];
        _notRecipients = [.. sessions.SelectMany(session => session.NamedDonors)];
        _begun = [.. new BegunReader(draft, sessions, today).Read().Select(Held)];
        _onSheets = OnOpenSheet.Of(draft.Herd, sessions, _methods);
    }

    /// <summary>A donor carries nobody's embryo, and nobody goes on for a session that is given up.</summary>
    private BegunAnimal Held(BegunAnimal one) => _notRecipients.Contains(one.Animal) ? one with { State = BegunState.IsDonor }
        : _sessions.Any(session => session.Number == one.Session && session.IsStopped) ? one with { State = BegunState.Stopped }
        : one;

    /// <summary>Names them.</summary>
    /// <param name="draft">The programme's lists, judged on the days of its first session.</param>
    /// <param name="today">The day of planning.</param>
    /// <returns>The sessions that are not over; none where no list of recipients is drawn up.</returns>
    public static ImmutableArray<NamedSession> Name(Draft draft, LocalDate today)
    {
        ArgumentNullException.ThrowIfNull(draft);
        var sessions = JudgedSession.Of(draft, today);
        return sessions.Any(session => session.Recipients is null)
            ? []
            : Asked(new Namer(sessions, draft, today).Name([.. sessions.Select(session => WantedRecipients.Of(session, today))]), today);
    }

    /// <summary>The same, where so many are wanted.</summary>
    internal static ImmutableArray<NamedSession> Name(Draft draft, LocalDate today, int?[] wanted) => Asked(new Namer(JudgedSession.Of(draft, today), draft, today).Name(wanted), today);

    /// <summary>With what is to be found out of whom, on which days.</summary>
    private static ImmutableArray<NamedSession> Asked(ImmutableArray<NamedSession> named, LocalDate today) => WhoWaits.In([.. named.Select(session => DueDays.In(DonorsToAsk.In(DaysToFindOut.In(session, today), today)))]);

    /// <summary>How many are wanted goes by the share used of those who are named, and who is named by how many are wanted: again until it grows no more.</summary>
    private ImmutableArray<NamedSession> Name(WantedRecipients[] wanted)
    {
        int?[] places = [.. wanted.Select(one => one.With(one.Liked))];
        while (true)
        {
            var named = Name(places);
            int?[] more = [.. named.Select((session, i) => wanted[i].With(Used(session, wanted[i].Liked)) is { } again && again > places[i] ? again : places[i])];
            if (more.SequenceEqual(places))
            {
                return named;
            }

            places = more;
        }
    }

    /// <summary>The share of those named that is used, where it is less than that of the method liked best.</summary>
    private static Rate? Used(NamedSession session, Rate? liked)
    {
        if (liked is not { } best || session.Named.IsEmpty)
        {
            return liked;
        }

        var shares = session.Methods.ToDictionary(method => method.Method.Name, method => Uses.Of(method).Share);
        var mean = session.Named.Average(animal => shares.GetValueOrDefault(animal.Method, best.Share));
        return mean < best.Share ? best with { Share = mean } : best;
    }

    private ImmutableArray<NamedSession> Name(int?[] wanted)
    {
        var board = new Board(new SessionCandidates(_sessions, _methods, _points, _notRecipients, _begun), wanted);
        board.KeepThoseOnOpenSheets(_onSheets);
        board.Book();
        board.NameTheSure();
        board.FillWithThoseToAsk();
        return new BoardRead(board).Sessions();
    }
}
