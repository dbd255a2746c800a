namespace Byrelaw.Judging.Tests.Reference;

/// <summary>What a farm's rows say, and what they might have said.</summary>
public sealed class FarmAsRead
{
    private readonly List<Happening>[,] _byAnimalAndKind;
    private readonly List<(Kind Kind, int Day)> _ofGroups;
    private readonly HashSet<int> _ofSheets;

    public FarmAsRead(PlainFarm farm, Vocabulary vocabulary, RecordKeeping? keeping, LocalDate? knownOn)
    {
        Animals = [.. farm.Animals.Select((row, i) => AnimalAsRead.Read(i, row, farm, vocabulary))];
        var places = Animals.ToDictionary(animal => animal.Number, animal => animal.Index);
        var seen = farm.Events.Select((row, i) => (row, Line: PlainFarm.LineOf(i))).Where(row => KnownDay.IsSeen(row.row, knownOn)).ToList();
        Known = KnownDay.Of(keeping, knownOn, seen.Select(row => row.row), Animals);
        var today = KnownDay.Today(keeping, knownOn, farm.Events, Animals);
        Animals = [.. Animals.Select(animal => animal.BornFirst > today ? animal with { BornFirst = null, BornLast = null, BirthUnreadable = true } : animal)];
        // "Parity has a day: a column `parity on`, else the day the records reach today."
        Animals = [.. Animals.Select(animal => animal with { ParityOn = !animal.SaysParityOn ? today : animal.ParityOn > today ? null : animal.ParityOn })];
        var leaveOut = keeping?.LeaveOut.Select(left => NameFolding.Fold(left.Word)).ToHashSet() ?? [];
        var rows = seen
            .Select(row => RowAsRead.Read(row.row, row.Line, places, vocabulary))
            .Where(row => row.Kind is not null || !leaveOut.Contains(NameFolding.Fold(row.Row.Kind)))
            .Where(row => !OpenRowsReference.SaysNotDone(row, vocabulary))
            .Select(row => WithPossibleDate(row, farm))
            .ToList();
        _ofSheets = seen.Where(row => farm.IsOfSheet(row.row)).Select(row => row.Line).ToHashSet();
        rows = [.. rows, .. WrongAnimalReference.MayBeBack(rows, Animals, vocabulary)];
        rows = [.. rows.Select(row => WrongAnimalReference.IsSurely(row, rows, Animals) ? row with { Whom = Whom.CannotBeRead } : row)];

        StrangersMoves = [.. rows.Where(row => row is { Whom: Whom.CannotBeRead, Kind: EventKind { IsMobMove: true } }
                && row.Row.Animal.Length > 0 && !places.ContainsKey(row.Row.Animal) && !row.Row.Animal.StartsWith("mob:", StringComparison.Ordinal))
            .Select(row => (row.Day, row.Row.Value.Length > 0 && !row.Row.Value.Contains('?', StringComparison.Ordinal) ? NameFolding.Fold(row.Row.Value) : null))];

        // Whole mobs and the herd can be moved and sold too; who is in them then is what the single animals' rows say.
        var single = new RowSorting(rows, Animals, vocabulary, members: null);
        Mobs = new MobsReference(this, single);
        Presence = new PresenceReference(this, single);
        var moves = new PromiseReference(keeping, vocabulary.MobMove, Known, rows.Where(row => row is { Kind: EventKind { IsMobMove: true }, RestCanBeRead: true } && row.Whom != Whom.CannotBeRead).Max(row => row.Day));

        // First whole mobs move; then what happened to a mob happened to those who were in it.
        Mobs = new MobsReference(this, new RowSorting(rows, Animals, vocabulary, members: this, moves.Holds));
        var all = new RowSorting(rows, Animals, vocabulary, members: this, moves.Holds);
        Details = new DetailsAsRead(farm, vocabulary, keeping);
        var open = OpenRowsReference.Of(farm, rows, [.. seen.Select(row => row.row)], places, vocabulary, knownOn).ToList();
        open.AddRange(DoublesReference.Of(Animals, vocabulary, [], [.. open]).ToList());
        var calvings = new CalvingsTooNearReference(Animals, vocabulary, all.Happenings, [.. all.Unread, .. open]);
        var filtered = new FilteredAsRead(vocabulary, Details, calvings.Believed, all.MobResults, all.GroupResults);
        Happenings = [.. calvings.Believed, .. filtered.Happenings];
        MobResults = [.. all.MobResults, .. filtered.MobResults];
        Unread = [.. calvings.Doubted, .. filtered.Unread];
        _ofGroups = all.OfGroups;
        GroupEvents = all.GroupEvents;
        GroupResults = [.. all.GroupResults, .. filtered.GroupResults];
        MobNames = all.MobNames;
        Mobs = new MobsReference(this, all);
        Presence = new PresenceReference(this, all);
        _byAnimalAndKind = new List<Happening>[Animals.Count, vocabulary.ById.Length];
        foreach (var row in Happenings.OrderBy(row => row.Day).ThenBy(row => row.Line))
        {
            (_byAnimalAndKind[row.Animal, row.Kind.Id] ??= []).Add(row);
        }

        Unread = [.. Unread, .. LostStartReference.Of(this, vocabulary).ToList()];
    }

    public IReadOnlyList<AnimalAsRead> Animals { get; }

    /// <summary>What more is on record of entries.</summary>
    public DetailsAsRead Details { get; }

    /// <summary>The known day.</summary>
    public int Known { get; }

    public IReadOnlyList<Happening> Happenings { get; }

    public IReadOnlyList<MobResult> MobResults { get; }

    public IReadOnlyList<Unread> Unread { get; }

    /// <summary>Events of mobs and of the herd.</summary>
    public IReadOnlyList<GroupEvent> GroupEvents { get; }

    /// <summary>Results of mobs and of the herd that may or may not be each member's.</summary>
    public IReadOnlyList<GroupResult> GroupResults { get; }

    /// <summary>Moves of numbers that are not among the animals: "he may be a bull nobody listed". No day for any, no mob for any.</summary>
    public IReadOnlyList<(int? Day, string? Mob)> StrangersMoves { get; }

    /// <summary>Every mob that any cell or move names.</summary>
    public IReadOnlyCollection<string> MobNames { get; }

    public MobsReference Mobs { get; }

    public PresenceReference Presence { get; }

    /// <summary>The latest day on which a kind is on record, of an animal, a mob or the herd; null for none.</summary>
    public int? LatestEntry(Kind kind) =>
        Happenings.Where(row => row.Kind.Id == kind.Declaration.Id && !_ofSheets.Contains(row.Line)).Select(row => row.Day).Concat(_ofGroups.Where(row => row.Kind.Id == kind.Declaration.Id).Select(row => row.Day))
            .Select(day => (int?)day).Max();

    /// <summary>What is on record of one animal and kind, oldest first.</summary>
    public IReadOnlyList<Happening> Of(int animal, Kind kind) => _byAnimalAndKind[animal, kind.Id] ?? [];

    /// <summary>
    /// "A row dated after the known day is an error in the records"; so is one before her birth. Such a date says nothing:
    /// the row may be of any day.
    /// </summary>
    private RowAsRead WithPossibleDate(RowAsRead row, PlainFarm farm)
    {
        var impossible = (row.Day > Known && !farm.IsOfSheet(row.Row)) || (row.Whom == Whom.One && row.Day < Animals[row.Animal].BornFirst);
        return impossible ? row with { Day = null } : row;
    }
}
