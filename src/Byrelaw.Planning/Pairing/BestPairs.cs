namespace Byrelaw.Planning.Pairing;

/// <summary>
/// Which embryo into which recipient: of all ways to pair them one that is worth most, and of equals the one in which the first embryo has the smallest number, then the
/// second. Exact, by shortest augmenting paths (Kuhn 1955; Jonker and Volgenant 1987) over lists of whole numbers: the method needs only sums and comparisons.
/// </summary>
/// <remarks>
/// Each embryo has a place of its own besides, where it is left over and worth nothing: so all of them have a place. What a pair costs is its worth taken from nothing; the prices of
/// embryos and places that the method keeps never ask more than a pair costs, and exactly that of a pair that is made. A pair whose prices ask just what it costs may stand in a best pairing.
/// </remarks>
internal sealed class BestPairs
{
    private const int Nobody = -1;

    private readonly PairWorth?[][] _worth;
    private readonly int _recipients;
    private readonly int _places;
    private readonly PairWorth[] _ofEmbryo;
    private readonly PairWorth[] _ofPlace;
    private readonly int[][] _placesOf;
    private readonly int[] _at;
    private readonly int[] _holder;

    private BestPairs(PairWorth?[][] worth, int recipients)
    {
        (_worth, _recipients, _places) = (worth, recipients, recipients + worth.Length);
        (_ofEmbryo, _ofPlace) = (new PairWorth[worth.Length], new PairWorth[_places]);
        _placesOf = [.. worth.Select((own, embryo) => Enumerable.Range(0, recipients).Where(place => own[place] is not null).Append(recipients + embryo).ToArray())];
        (_at, _holder) = (new int[worth.Length], new int[_places]);
        Array.Fill(_at, Nobody);
        Array.Fill(_holder, Nobody);
    }

    /// <summary>Finds it.</summary>
    /// <param name="worth">By embryo, in the order of their labels, and by recipient, in the order of their numbers; null where they do not fit. No pair is worth less than nothing.</param>
    /// <param name="recipients">How many recipients there are.</param>
    public static BestPairs Of(PairWorth?[][] worth, int recipients)
    {
        var best = new BestPairs(worth, recipients);
        for (var embryo = 0; embryo < worth.Length; embryo++)
        {
            best.FindAPlace(embryo);
        }

        best.PreferSmallNumbers();
        return best;
    }

    /// <summary>Which recipient an embryo goes into; -1 for none.</summary>
    public int RecipientOf(int embryo) => _at[embryo] < _recipients ? _at[embryo] : Nobody;

    /// <summary>What would be lost if a pair were not made, and which embryo the recipient would have then; -1 for none.</summary>
    /// <param name="embryo">One that is paired.</param>
    public (PairWorth Lost, int Instead) Without(int embryo)
    {
        var place = _at[embryo];
        var paths = Search(embryo, besides: place);
        while (paths.Next() is var next && next != place)
        {
            if (_holder[next] is var holder and not Nobody)
            {
                paths.Spread(holder, next);
            }
            else
            {
                paths.SpreadFromFree(next);
            }
        }

        var from = paths.From[place];
        return (paths.Far[place], from >= _places ? Nobody : _holder[from]);
    }

    private void FindAPlace(int embryo)
    {
        var paths = Search(embryo, besides: Nobody);
        int end;
        while (_holder[end = paths.Next()] != Nobody)
        {
            paths.Spread(_holder[end], end);
        }

        // Prices rise by as much as each is nearer than the end.
        var far = paths.Far[end];
        _ofEmbryo[embryo] += far;
        for (var place = 0; place < _places; place++)
        {
            if (paths.IsDone[place] && place != end)
            {
                var nearer = far - paths.Far[place];
                _ofPlace[place] -= nearer;
                _ofEmbryo[_holder[place]] += nearer;
            }
        }

        for (var place = end; ;)
        {
            var from = paths.From[place];
            var moved = from == Nobody ? embryo : _holder[from];
            (_holder[place], _at[moved]) = (moved, place);
            if (from == Nobody)
            {
                return;
            }

            place = from;
        }
    }

    /// <summary>Embryo by embryo: it takes the smallest number that it can have if others move without loss. What is taken once stays.</summary>
    private void PreferSmallNumbers()
    {
        var stays = new bool[_at.Length];
        for (var embryo = 0; embryo < _at.Length; embryo++)
        {
            var (now, next) = (_at[embryo], ToFill(embryo, stays));
            var best = Enumerable.Range(0, _places).First(place => next[place] is not null && IsTight(embryo, place));
            if (best != now)
            {
                Move(embryo, best, now, next);
            }

            stays[embryo] = true;
        }
    }

    /// <summary>From each place where its holder goes so that in the end the embryo's own place is filled, or stays free where that costs nothing; null where it cannot be.</summary>
    private int?[] ToFill(int embryo, bool[] stays)
    {
        var (next, reached) = (new int?[_places], new Queue<int>([_at[embryo]]));
        next[_at[embryo]] = _at[embryo];
        var freeToo = false;
        while (reached.TryDequeue(out var place))
        {
            if (!freeToo && _ofPlace[place] == PairWorth.None)
            {
                freeToo = true;
                for (var other = 0; other < _places; other++)
                {
                    Reach(_holder[other] == Nobody ? other : Nobody, place);
                }
            }

            for (var other = 0; other < _at.Length; other++)
            {
                Reach(other != embryo && !stays[other] && next[_at[other]] is null && IsTight(other, place) ? _at[other] : Nobody, place);
            }
        }

        return next;

        void Reach(int from, int to)
        {
            if (from != Nobody && next[from] is null)
            {
                next[from] = to;
                reached.Enqueue(from);
            }
        }
    }

    private void Move(int embryo, int to, int from, int?[] next)
    {
        _holder[from] = Nobody;
        for (var (mover, place) = (embryo, to); ;)
        {
            var displaced = _holder[place];
            _holder[place] = mover;
            if (mover != Nobody)
            {
                _at[mover] = place;
            }

            if (place == from)
            {
                return;
            }

            (mover, place) = (displaced, next[place]!.Value);
        }
    }

    /// <summary>Recipients that it fits, and its own place.</summary>
    private int[] PlacesOf(int embryo) => _placesOf[embryo];

    /// <summary>What a pair costs beyond the prices of both; null where they do not fit.</summary>
    private PairWorth? Beyond(int embryo, int place) =>
        place < _recipients ? _worth[embryo][place] is { } worth ? PairWorth.None - worth - _ofEmbryo[embryo] - _ofPlace[place] : null
        : place == _recipients + embryo ? PairWorth.None - _ofEmbryo[embryo] - _ofPlace[place] : null;

    private bool IsTight(int embryo, int place) => Beyond(embryo, place) == PairWorth.None;

    private Paths Search(int embryo, int besides)
    {
        var paths = new Paths(this);
        paths.Start(embryo, besides);
        return paths;
    }

    /// <summary>The cheapest chains of moves from one embryo to every place (Dijkstra 1959): who holds a place goes on to the next.</summary>
    private sealed class Paths(BestPairs of)
    {
        private readonly bool[] _known = new bool[of._places];
        private bool _freeSpread;

        public PairWorth[] Far { get; } = new PairWorth[of._places];

        /// <summary>The place whose holder moves here; -1 for the embryo itself.</summary>
        public int[] From { get; } = new int[of._places];

        public bool[] IsDone { get; } = new bool[of._places];

        public void Start(int embryo, int besides)
        {
            foreach (var place in of.PlacesOf(embryo))
            {
                if (place != besides && of.Beyond(embryo, place) is { } beyond)
                {
                    Know(place, beyond, Nobody);
                }
            }
        }

        /// <summary>The nearest place that was not told yet.</summary>
        public int Next()
        {
            var next = Nobody;
            for (var place = 0; place < of._places; place++)
            {
                if (_known[place] && !IsDone[place] && (next == Nobody || Far[place].CompareTo(Far[next]) < 0))
                {
                    next = place;
                }
            }

            IsDone[next] = true;
            return next;
        }

        /// <summary>Its holder may go on.</summary>
        public void Spread(int holder, int from)
        {
            foreach (var place in of.PlacesOf(holder))
            {
                if (!IsDone[place] && of.Beyond(holder, place) is { } beyond && Far[from] + beyond is var far && (!_known[place] || far.CompareTo(Far[place]) < 0))
                {
                    Know(place, far, from);
                }
            }
        }

        /// <summary>One place more than before is filled: so any other may be left, at its price.</summary>
        public void SpreadFromFree(int from)
        {
            if (_freeSpread)
            {
                return;
            }

            _freeSpread = true;
            for (var place = 0; place < of._places; place++)
            {
                if (!IsDone[place] && of._holder[place] != Nobody && Far[from] - of._ofPlace[place] is var far && (!_known[place] || far.CompareTo(Far[place]) < 0))
                {
                    Know(place, far, of._places + from);
                }
            }
        }

        private void Know(int place, PairWorth far, int from) => (_known[place], Far[place], From[place]) = (true, far, from);
    }
}
