namespace Byrelaw.Planning.Naming;

/// <summary>Reads from a board who is named, asked about, spare and watched, session by session.</summary>
internal sealed class BoardRead(Board board)
{
    private readonly SessionCandidates _all = board.All;

    /// <summary>Every session.</summary>
    public ImmutableArray<NamedSession> Sessions() => [.. _all.Sessions.Select((session, i) => new NamedSession(session, _all.Methods(i))
    {
        Wanted = board.Wanted(i),
        BegunAndNotNamed = [.. _all.AllBegun.Where(one => (one.Sessions.Contains(session.Number) || (one.Sessions.IsEmpty && i == 0)) && !_all.IsBegunFor(one, i))],
        Named = [.. _all.Where(one => board.IsNamed(one, i)).Select(one => Named(one, i) with { Before = [.. Before(one, i)] })],
        ToAsk = [.. _all.Where(one => board.IsAsked(one, i)).Select(one => Named(one, i) with { OpenSheet = board.SheetOf(one) })],
        Spares = [.. _all.Where(one => !board.IsPlaced(one) && FirstSure(one) == i).OrderByDescending(one => _all.WholePointsOf(one, i)).Select(one => Named(one, i))],
        Watched = [.. _all.Where(one => IsWatched(one, i, Standing.Sure)).Select(one => Watched(one, i))],
        WatchedIfKnown = [.. _all.Where(one => IsWatched(one, i, Standing.ToAsk)).Select(one => Watched(one, i))],
        BookedAndOut = board.BookedAndOutOf(i),
    })];

    private NamedAnimal Named(int one, int session)
    {
        var (animal, points) = (_all.AnimalAt(one), _all.Points(one, session));
        if (_all.BegunOf(one) is { } begun)
        {
            return new(animal, NumberOf(one), begun.Method.Name, begun.Start, points) { IsBegun = true };
        }

        var method = _all.MethodOf(one, session) ?? _all.Methods(session)[0];
        return new(animal, NumberOf(one), method.Method.Name, method.Days.Start, points) { IsBooked = board.IsBooked(one, session) };
    }

    private NamedAnimal Watched(int one, int session) => new(_all.AnimalAt(one), NumberOf(one), Natural(session)!.Method.Name, Natural(session)!.Day, _all.Points(one, session));

    private string NumberOf(int one) => _all.Sessions[0].Judge.Herd.Numbers[_all.AnimalAt(one)];

    /// <summary>The first session that she could be named for, from the first of which she is sure; -1 for none.</summary>
    private int FirstSure(int one) => Enumerable.Range(0, _all.Sessions.Length).FirstOrDefault(session => board.CanBeNamed(one, session), -1);

    /// <summary>Written first, natural heat keeps those it suits off treatment; anywhere else it watches whoever is left over.</summary>
    private bool IsWatched(int one, int session, Standing standing) =>
        Natural(session) is { } natural && !board.IsPlaced(one) && !board.IsAskedAnywhere(one) && natural.Animals[_all.AnimalAt(one)].Standing == standing;

    private MethodChecked? Natural(int session) => _all.Methods(session).FirstOrDefault(method => method.Method.IsNatural);

    /// <summary>The earlier sessions that she could serve too, and who has their places.</summary>
    private IEnumerable<TakenPlaces> Before(int one, int session)
    {
        for (var before = 0; before < session; before++)
        {
            if (board.CanBeNamed(one, before))
            {
                var there = _all.Where(other => board.IsNamed(other, before)).ToList();
                yield return new(_all.Sessions[before].Number, there.Count, there.Count(other => !Enumerable.Range(0, _all.Sessions.Length).Any(elsewhere => elsewhere != before && board.CanBeNamed(other, elsewhere))));
            }
        }
    }
}
