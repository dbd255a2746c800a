namespace Byrelaw.Records.Herds;

/// <summary>
/// On which days "nothing on record" means "did not happen": by kind as the farm declares, by
/// animal from joining to leaving, and never across a row that could not be read.
/// </summary>
/// <remarks>
/// For one animal and kind the covered days are: all days before <c>NeededFrom</c> (before birth, or
/// before the age at which the kind can happen), and the days from the later of the declared date
/// and her joining to her leaving; less the holes and the gaps. <em>Strictly</em>, coverage stops at the known
/// day; else days after it are taken as days on which nothing more happens.
/// </remarks>
public sealed class Coverage
{
    /// <summary>By kind id: the declared date; <see cref="Day.End"/> where none is declared.</summary>
    public required int[] Since { get; init; }

    /// <summary>By kind id, then animal: the first day on which the kind need be covered; <see cref="Day.Start"/>
    /// where her birth is not known. Kinds without an age limit share one array.</summary>
    public required int[][] NeededFrom { get; init; }

    /// <summary>By animal: the day from which the farm can have kept records of her; <see cref="Day.Start"/> for one born here.</summary>
    public required int[] Joined { get; init; }

    /// <summary>By animal: the day she left, the last one covered; <see cref="Day.End"/> where she has not.</summary>
    public required int[] Left { get; init; }

    /// <summary>The day the records reach.</summary>
    public required int KnownDay { get; init; }

    /// <summary>By kind id: the day up to which it is written down, at most <see cref="KnownDay"/>. Days between are a hole:
    /// they are past, and nobody says what happened on them.</summary>
    public required int[] Reach { get; init; }

    /// <summary>By kind id: the day from which the farm says that there is none; <see cref="Day.End"/> where it does not say so. Empty: nowhere.</summary>
    public int[] NoneFrom { get; init; } = [];

    /// <summary>By kind id: the first day of the last promise with a reason and an agreement; <see cref="Day.End"/> for none. Empty: nowhere.</summary>
    public int[] AgreedFrom { get; init; } = [];

    /// <summary>By kind id: the first day of a promise that is not believed of anybody; <see cref="Day.End"/> for none. Empty: nowhere.</summary>
    public int[] SetAside { get; init; } = [];

    /// <summary>By kind id: the first day of what is promised of everybody, where sheets say of each animal which entry was her last and so promise more;
    /// <see cref="Day.End"/> where nothing is promised of all. Empty: nowhere.</summary>
    public int[] SinceOfAll { get; init; } = [];

    /// <summary>The first day from which a kind is promised of everybody, and so of whole mobs.</summary>
    public int SinceForAll(int kind) => SinceOfAll.Length == 0 ? Since[kind] : Math.Max(Since[kind], SinceOfAll[kind]);

    /// <summary>Whether nothing but sheets with each animal's last entry promise a kind.</summary>
    public bool IsSinceHerLast(int kind) => Since[kind] < Day.End && SinceForAll(kind) == Day.End;

    /// <summary>Days that promises leave out, by (kind, animal, first day).</summary>
    public Hole[] Holes
    {
        get => _holes.All;
        init => _holes = new HolesInOrder(value);
    }

    /// <summary>All gaps, by (kind, animal, first day).</summary>
    public required Gap[] Gaps
    {
        get => _gaps.All;
        init => (_gaps, _onRecord) = (new GapsInOrder(value), new GapsInOrder(Array.FindAll(value, gap => gap.IsOnRecord)));
    }

    private readonly GapsInOrder _gaps = new([]);
    private readonly GapsInOrder _onRecord = new([]);
    private readonly HolesInOrder _holes = new([]);

    /// <summary>By kind id: whether any gap touches it. Where false, <see cref="Gaps"/> need not be looked at.</summary>
    public required bool[] HasGaps { get; init; }

    /// <summary>Whether every day from <paramref name="from"/> to <paramref name="to"/>, both included, is covered.
    /// No day at all (<paramref name="to"/> before <paramref name="from"/>) is.</summary>
    public bool Covers(int animal, int kind, int from, int to, bool strict) =>
        IsKept(animal, kind, from, to, strict) && (!HasGaps[kind] || !AnyGap(animal, kind, from, to));

    /// <summary>The same, but for the gaps: whether the farm says that it keeps these records over these days.</summary>
    public bool IsKept(int animal, int kind, int from, int to, bool strict) => IsKept(animal, kind, from, to, strict, Joined[animal], Left[animal]);

    /// <summary>The same for one who joined and left on other days.</summary>
    public bool IsKept(int animal, int kind, int from, int to, bool strict, int joined, int left)
    {
        var needed = NeededFrom[kind][animal];
        if (to < from || to < needed)
        {
            return true;
        }

        var start = Math.Max(Since[kind], joined);
        var end = strict ? Math.Min(KnownDay, left) : left;
        from = Math.Max(from, needed);
        return to <= end && from >= start && !_holes.Any(animal, kind, from, to);
    }

    /// <summary>The same without some of the rows that cannot be read.</summary>
    public Coverage Without(Predicate<Gap> left) => new()
    {
        Since = Since,
        Reach = Reach,
        SinceOfAll = SinceOfAll,
        Holes = Holes,
        NoneFrom = NoneFrom,
        AgreedFrom = AgreedFrom,
        SetAside = SetAside,
        NeededFrom = NeededFrom,
        Joined = Joined,
        Left = Left,
        KnownDay = KnownDay,
        Gaps = Array.FindAll(Gaps, gap => !left(gap)),
        HasGaps = HasGaps,
    };

    /// <summary>The day from which the farm says, and is believed, that there is none of a kind; <see cref="Day.End"/> where it does not.</summary>
    public int NoneOf(int kind) => NoneFrom.Length == 0 || Since[kind] == Day.End ? Day.End : NoneFrom[kind];

    /// <summary>The same promises with some taken back, and with days left out.</summary>
    /// <param name="since">By kind id.</param>
    /// <param name="reach">By kind id.</param>
    /// <param name="holes">In any order.</param>
    /// <param name="joined">By animal; null for as it was.</param>
    /// <param name="setAside">By kind id; null for as it was.</param>
    public Coverage With(int[] since, int[] reach, IEnumerable<Hole> holes, int[]? joined = null, int[]? setAside = null) => new()
    {
        SetAside = setAside ?? SetAside,
        SinceOfAll = SinceOfAll,
        Since = since,
        Reach = reach,
        NoneFrom = NoneFrom,
        AgreedFrom = AgreedFrom,
        Holes = Sorted(holes),
        NeededFrom = NeededFrom,
        Joined = joined ?? Joined,
        Left = Left,
        KnownDay = KnownDay,
        Gaps = Gaps,
        HasGaps = HasGaps,
    };

    /// <summary>Holes in the order in which they are looked up.</summary>
    public static Hole[] Sorted(IEnumerable<Hole> holes) => [.. holes.OrderBy(hole => hole.Kind).ThenBy(hole => hole.Animal).ThenBy(hole => hole.From)];

    /// <summary>The holes of a kind that an animal has, her own and everyone's.</summary>
    public IEnumerable<Hole> HolesOf(int animal, int kind) => _holes.Of(animal, kind);

    /// <summary>The first day after <paramref name="day"/> on which a hole of this animal and kind begins or is over; int.MaxValue for none.</summary>
    public int NextHoleEdge(int animal, int kind, int day) => _holes.NextEdge(animal, kind, day);

    /// <summary>Whether a gap of this animal and kind can be dated in the days given; in no day at all, none can.</summary>
    public bool AnyGap(int animal, int kind, int from, int to)
    {
        if (!HasGaps[kind])
        {
            return false;
        }

        // Before her birth, or the age at which it can happen, no row can have been hers but one that surely is.
        if (_onRecord.All.Length > 0 && from <= to && _onRecord.Any(kind, animal, from, to))
        {
            return true;
        }

        from = Math.Max(from, NeededFrom[kind][animal]);
        return from <= to
            && (_gaps.Any(kind, animal, from, to) || _gaps.Any(kind, -1, from, to) || _gaps.Any(-1, animal, from, to) || _gaps.Any(-1, -1, from, to));
    }

    /// <summary>The first day after <paramref name="day"/> on which a gap of this animal and kind begins or is over; int.MaxValue for none.</summary>
    public int NextGapEdge(int animal, int kind, int day) => !HasGaps[kind] ? int.MaxValue : Math.Min(
        Math.Min(_gaps.NextEdge(kind, animal, day), _gaps.NextEdge(kind, -1, day)), Math.Min(_gaps.NextEdge(-1, animal, day), _gaps.NextEdge(-1, -1, day)));

    /// <summary>The same, of rows whose kind can be read only.</summary>
    public bool AnyGapOf(int animal, int kind, int from, int to)
    {
        if (HasGaps[kind] && _onRecord.All.Length > 0 && from <= to && _onRecord.Any(kind, animal, from, to))
        {
            return true;
        }

        from = Math.Max(from, NeededFrom[kind][animal]);
        return HasGaps[kind] && from <= to && (_gaps.Any(kind, animal, from, to) || _gaps.Any(kind, -1, from, to));
    }
}
