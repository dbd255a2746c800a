namespace Byrelaw.Judging.Tests.Reference;

/// <summary>
/// On which days "not on record" means "did not happen". "An absence counts as did not happen only where the farm declares
/// that it keeps that kind of record, and only up to the day the records reach."
/// </summary>
public sealed class CoverageReference
{
    private readonly FarmAsRead _farm;
    private readonly RecordKeeping? _keeping;
    private readonly Predicate<Unread> _passedOver;
    private readonly Dictionary<int, int[]> _uncoveredBefore = [];
    private readonly Dictionary<int, bool> _parityIsDoubted = [];
    private readonly EventKind? _calving;

    /// <param name="farm">What the rows say.</param>
    /// <param name="keeping">What the farm says is complete.</param>
    /// <param name="dawn">A day before everything on record, declared or born.</param>
    /// <param name="dusk">The last day anything is judged on.</param>
    /// <param name="calving">What calving is called; null where nothing is.</param>
    /// <param name="passedOver">Rows that are no doubt here; null for none.</param>
    public CoverageReference(FarmAsRead farm, RecordKeeping? keeping, int dawn, int dusk, EventKind? calving, Predicate<Unread>? passedOver = null)
    {
        _calving = calving;
        _passedOver = passedOver ?? (_ => false);
        _farm = farm;
        _keeping = keeping;
        Dawn = dawn;
        Dusk = dusk;
    }

    /// <summary>A day before everything; it stands for all the days before it too.</summary>
    public int Dawn { get; }

    /// <summary>The last day.</summary>
    public int Dusk { get; }

    /// <summary>Whether every day from one to another is covered; no day at all is.</summary>
    public bool Covers(int animal, Kind kind, int from, int to, bool strict)
    {
        var uncovered = UncoveredBefore(animal, kind, strict);
        from = Math.Max(from, Dawn);
        return to < from || uncovered[to + 1 - Dawn] == uncovered[from - Dawn];
    }

    /// <summary>The days from one to another on which a kind may have happened unrecorded, the latest first.</summary>
    public IEnumerable<int> Uncovered(int animal, IReadOnlyList<Kind> kinds, int from, int to, bool strict)
    {
        var uncovered = kinds.Select(kind => UncoveredBefore(animal, kind, strict)).ToArray();
        for (var day = to; day >= from; day--)
        {
            foreach (var before in uncovered)
            {
                if (before[day + 1 - Dawn] != before[day - Dawn])
                {
                    yield return day;
                    break;
                }
            }
        }
    }

    /// <summary>The same, whatever rows could not be read: whether the farm says that it keeps these records over these days.</summary>
    public bool Keeps(int animal, Kind kind, int from, int to)
    {
        from = Math.Max(from, Dawn);
        return to < from || Enumerable.Range(from, to - from + 1).All(Kept(animal, kind, strict: false));
    }

    /// <summary>The first day that the farm promises a kind since; null where it does not.</summary>
    public int? DeclaredSince(Kind kind) => new PromiseReference(_keeping, kind.Declaration, _farm.Known, _farm.LatestEntry(kind.Declaration)).Since;

    /// <summary>
    /// "Parity 3 on record, calving promised for her whole life and fewer calvings by its day: calving is uncovered for her everywhere." A parity that
    /// cannot be read, or of which nobody knows the day, may be one.
    /// </summary>
    public bool ParityIsDoubted(int place) =>
        _parityIsDoubted.TryGetValue(place, out var doubted) ? doubted : _parityIsDoubted[place] = FewerCalvingsThanParity(place);

    private bool FewerCalvingsThanParity(int place)
    {
        if (_calving is not { } calving || _farm.Animals[place] is not { IsFemale: not false } animal || (animal.BornFirst is null && !animal.BirthUnreadable))
        {
            return false;
        }

        // "An unreadable birth must not lend a parity belief": as far as anybody can tell, all her life may be promised.
        var by = animal.ParityUnreadable || animal is { Parity: > 0, ParityOn: null } ? _farm.Known : animal.ParityOn ?? _farm.Known;
        var needed = animal.BornFirst is null ? by : NeededFrom(animal, calving);
        if (animal.ParityUnreadable || animal is { Parity: > 0, ParityOn: null })
        {
            return _farm.Known >= needed && IsPromised(needed, _farm.Known);
        }

        return animal is { Parity: { } number, ParityOn: { } on }
            && _farm.Of(place, calving).Where(row => row.Day <= on).Select(row => row.Day).Distinct().Count() < number
            && IsPromised(needed, on);

        bool IsPromised(int from, int to)
        {
            var promise = new PromiseReference(_keeping, calving, _farm.Known, _farm.LatestEntry(calving));
            return from > to || Enumerable.Range(from, to - from + 1).All(day =>
                day <= _farm.Known && promise.Holds(day) && day >= _farm.Presence.CoveredFrom(place) && day <= _farm.Presence.CoveredUntil(place));
        }
    }

    /// <summary>How many days before each day are not covered, counted from dawn: so that a stretch needs no walk.</summary>
    private int[] UncoveredBefore(int animal, Kind kind, bool strict)
    {
        var key = (((animal * 1000) + kind.Id) * 2) + (strict ? 1 : 0);
        if (!_uncoveredBefore.TryGetValue(key, out var before))
        {
            before = new int[Dusk - Dawn + 2];
            var covered = Covered(animal, kind, strict);
            for (var day = Dawn; day <= Dusk; day++)
            {
                before[day + 1 - Dawn] = before[day - Dawn] + (covered(day) ? 0 : 1);
            }

            _uncoveredBefore[key] = before;
        }

        return before;
    }

    /// <summary>"An animal born on the farm has nothing before her birth to cover. <c>event calving ... not before 15 months of
    /// age</c> says that nothing before that age need be covered either."</summary>
    public static int NeededFrom(AnimalAsRead animal, Kind kind) =>
        animal.BornFirst is not { } born ? int.MinValue
        : kind is EventKind { NotBeforeAge: { } age } ? Sums.After(age, born)
        : born;

    private Func<int, bool> Covered(int animal, Kind kind, bool strict)
    {
        var kept = Kept(animal, kind, strict);
        var unread = _farm.Unread.Where(row => row.MayBeOf(_farm.Animals[animal]) && row.MayBeA(kind) && !_passedOver(row)).ToList();
        var needed = NeededFrom(_farm.Animals[animal], kind);
        return day => kept(day) && !unread.Any(row => (day >= needed || row.IsOnRecord) && row.MayBeIn(day, day));
    }

    /// <summary>Tells of single days whether a kind is kept for an animal, whatever rows could not be read.</summary>
    /// <param name="animal">Her place.</param>
    /// <param name="kind">Of what.</param>
    /// <param name="strict">Coverage stops at the known day; else "later days are judged as if nothing more happens".</param>
    private Func<int, bool> Kept(int animal, Kind kind, bool strict)
    {
        // "Its coverage is the kind's."
        var promise = new PromiseReference(_keeping, kind.Declaration, _farm.Known, _farm.LatestEntry(kind.Declaration));

        // "Coverage of a kind starts at the later of the declared date and her latest event that joins the herd, and ends at one that leaves it."
        var from = _farm.Presence.CoveredFrom(animal);
        var until = strict ? Math.Min(_farm.Known, _farm.Presence.CoveredUntil(animal)) : _farm.Presence.CoveredUntil(animal);
        var needed = NeededFrom(_farm.Animals[animal], kind);
        var isDoubted = kind.Declaration.Id == _calving?.Id && ParityIsDoubted(animal);
        return day => day < needed || (!isDoubted && day >= from && day <= until && promise.Holds(day));
    }
}
