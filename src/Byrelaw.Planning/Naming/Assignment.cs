namespace Byrelaw.Planning.Naming;

/// <summary>
/// The best assignment of animals to places, of which each session has so many that are alike. The most is gained; of equals the first session
/// has the smallest numbers, then the second. Exact: the best path is added one after the other (Busacker and Gowen 1961; that the best of each size is a path
/// from the best of the size before it: Ford and Fulkerson 1962), in sums and comparisons of whole numbers only.
/// </summary>
internal sealed class Assignment
{
    private readonly Gain?[][] _gains;
    private readonly int[] _free;
    private readonly int[] _at;
    private readonly bool[] _stays;
    private readonly int _nowhere;
    private readonly Gain _nothing;

    private Assignment(Gain?[][] gains, int[] places, Gain nothing)
    {
        (_gains, _free, _nothing) = (gains, [.. places], nothing);
        _nowhere = places.Length;
        _at = new int[gains.Length];
        _stays = new bool[gains.Length];
        Array.Fill(_at, _nowhere);
    }

    /// <summary>For each animal the session in which she has a place, counted from 0; -1 for none.</summary>
    /// <param name="gains">By animal, in the order of their numbers, and by session: what her place there gains; null where she cannot have one. A place always gains something.</param>
    /// <param name="places">How many each session has.</param>
    /// <param name="nothing">Nothing gained, as long as all gains.</param>
    public static int[] Best(Gain?[][] gains, int[] places, Gain nothing)
    {
        var best = new Assignment(gains, places, nothing);
        best.Fill();
        best.PreferSmallNumbers();
        return [.. best._at.Select(session => session == best._nowhere ? -1 : session)];
    }

    private void Fill()
    {
        while (Paths.From(this, _nowhere) is var paths && BestEnd(paths) is var end and >= 0)
        {
            Move(paths, end);
            _free[end]--;
        }
    }

    private int BestEnd(Paths paths)
    {
        var best = -1;
        for (var session = 0; session < _nowhere; session++)
        {
            if (_free[session] > 0 && paths.Gains[session] is { } gain && gain.CompareTo(_nothing) > 0 && (best < 0 || gain.CompareTo(paths.Gains[best]!.Value) > 0))
            {
                best = session;
            }
        }

        return best;
    }

    /// <summary>Session by session, animal by animal: she takes a place if others can move so that nothing is lost by it.</summary>
    private void PreferSmallNumbers()
    {
        for (var session = 0; session < _nowhere; session++)
        {
            for (var animal = 0; animal < _at.Length; animal++)
            {
                if (!_stays[animal] && _gains[animal][session] is { } gain)
                {
                    _stays[animal] = true;
                    _stays[animal] = _at[animal] == session || CanMove(animal, session, gain);
                }
            }
        }
    }

    private bool CanMove(int animal, int session, Gain gain)
    {
        var from = _at[animal];
        var paths = Paths.From(this, session);
        if (paths.Gains[from] is not { } others || !(gain - GainAt(animal) + others).IsNothing)
        {
            return false;
        }

        Move(paths, from);
        _at[animal] = session;
        return true;
    }

    private void Move(Paths paths, int end)
    {
        for (var to = end; to != paths.Start;)
        {
            var (animal, from) = paths.By[to];
            _at[animal] = to;
            to = from;
        }
    }

    private Gain GainAt(int animal) => _at[animal] == _nowhere ? _nothing : _gains[animal][_at[animal]]!.Value;

    /// <summary>The best chains of moves from one session (or from nowhere) to every other: each animal of a chain takes the place of the next.</summary>
    private sealed class Paths
    {
        public required int Start { get; init; }

        public required Gain?[] Gains { get; init; }

        public required (int Animal, int From)[] By { get; init; }

        public static Paths From(Assignment now, int start)
        {
            var count = now._nowhere + 1;
            var moves = Moves(now, count);
            var (gains, by) = (new Gain?[count], new (int Animal, int From)[count]);
            gains[start] = now._nothing;
            for (var (round, changed) = (1, true); changed && round < count; round++)
            {
                changed = false;
                for (var from = 0; from < count; from++)
                {
                    for (var to = 0; gains[from] is { } so && to < count; to++)
                    {
                        if (to != start && moves[from, to] is { } move && so + move.Gain is var gain && (gains[to] is not { } known || gain.CompareTo(known) > 0))
                        {
                            (gains[to], by[to], changed) = (gain, (move.Animal, from), true);
                        }
                    }
                }
            }

            return new Paths { Start = start, Gains = gains, By = by };
        }

        /// <summary>For each two sessions the animal that gains most, or loses least, by moving from the one to the other.</summary>
        private static (int Animal, Gain Gain)?[,] Moves(Assignment now, int count)
        {
            var moves = new (int Animal, Gain Gain)?[count, count];
            for (var animal = 0; animal < now._at.Length; animal++)
            {
                var (from, here) = (now._at[animal], now.GainAt(animal));
                for (var to = 0; to < count && !now._stays[animal]; to++)
                {
                    var there = to == now._nowhere ? now._nothing : now._gains[animal][to];
                    if (to != from && there is { } gained && gained - here is var gain && (moves[from, to] is not { } best || gain.CompareTo(best.Gain) > 0))
                    {
                        moves[from, to] = (animal, gain);
                    }
                }
            }

            return moves;
        }
    }
}
