namespace Byrelaw.Judging.Tests.Reference;

/// <summary>Sorts rows into what happened to whom, what is a mob's own result, and what could not be read.</summary>
public sealed class RowSorting
{
    private readonly IReadOnlyList<AnimalAsRead> _animals;
    private readonly FarmAsRead? _members;
    private readonly Func<int, bool>? _movesArePromised;

    /// <summary>Mobs that some animal's cell or move names; any other is as good as an unknown animal.</summary>
    private readonly HashSet<string> _mobNames;


    /// <param name="rows">All rows seen.</param>
    /// <param name="animals">All animals.</param>
    /// <param name="members">Tells who is in a mob and in the herd; null to leave the events of mobs and the herd out.</param>
    /// <param name="movesOf">Which promises count for moves; null where none do.</param>
    public RowSorting(IReadOnlyList<RowAsRead> rows, IReadOnlyList<AnimalAsRead> animals, Vocabulary vocabulary, FarmAsRead? members, Func<int, bool>? movesOf = null)
    {
        _movesArePromised = movesOf;
        _animals = animals;
        _members = members;
        var moves = rows.Where(row => row is { Kind: EventKind { IsMobMove: true }, Day: not null, RestCanBeRead: true } && row.Whom != Whom.CannotBeRead).ToList();
        _mobNames = [.. animals.Select(animal => animal.Mob).OfType<string>(),
            .. moves.Select(move => NameFolding.Fold(move.Row.Value))];
        foreach (var row in rows)
        {
            Sort(row);
        }

        // "Samples of one mob, equal in day, kind and value: one sample." The generators write no numbers of samples.
        MobResults = [.. MobResults.Where(result => result.Values.IsAny), .. MobResults.Where(result => !result.Values.IsAny).DistinctBy(result => (result.Mob, result.Measure.Id, result.Day, result.Values))];
        Unread.AddRange(DoublesReference.Of(animals, vocabulary, Happenings, [.. Unread]).ToList());
    }

    public List<Happening> Happenings { get; } = [];

    public List<MobResult> MobResults { get; private set; } = [];

    public List<Unread> Unread { get; } = [];

    /// <summary>Rows of mobs and of the herd that can be read, whoever they mean.</summary>
    public List<(Kind Kind, int Day)> OfGroups { get; } = [];
    /// <summary>Events of mobs and of the herd.</summary>
    public List<GroupEvent> GroupEvents { get; } = [];

    /// <summary>Results of a mob or the herd of a test, and of the herd of a measure: "each may or may not be each member's".</summary>
    public List<GroupResult> GroupResults { get; } = [];

    /// <summary>Every mob that any cell or move names.</summary>
    public IReadOnlyCollection<string> MobNames => _mobNames;

    private void Sort(RowAsRead row)
    {
        var whom = row.Whom == Whom.Mob && !_mobNames.Contains(row.Mob) ? Whom.CannotBeRead : row.Whom;
        switch (whom)
        {
            case Whom.CannotBeRead:
                Unread.Add(new Unread(null, row.Kind, row.Day, row.Line));
                break;
            case Whom.One when row is { Day: not null, Kind: not null, RestCanBeRead: true }:
                Happenings.Add(row.HappeningOf(row.Animal));
                break;
            case Whom.One:
                Unread.Add(new Unread(row.Animal, row.Kind, row.Day, row.Line) { Like = row.Like });
                break;
            case Whom.Mob or Whom.Herd:
                SortGroup(row);
                break;
        }
    }

    /// <summary>"A mob or herd row of an event is each member's on that date. A mob row of a measure or test is never an animal's own result."</summary>
    private void SortGroup(RowAsRead row)
    {
        if (row.Day is not { } day || row.Kind is not { } kind || !row.EntryCanBeRead || (kind is EventKind && !row.RestCanBeRead))
        {
            // Whose it is, then, nobody can say for sure: it may be anyone's.
            Unread.Add(new Unread(null, row.Kind, row.Day, row.Line));
        }
        else if (kind is TestKind || (kind is MeasureKind && row.Whom == Whom.Herd))
        {
            GroupResults.Add(new GroupResult(row.Whom == Whom.Herd ? null : row.Mob, row.WhateverResultOf()));
            OfGroups.Add((kind, day));
        }
        else if (kind is MeasureKind measure)
        {
            OfGroups.Add((kind, day));
            MobResults.Add(new MobResult(row.Mob, measure, day, row.Line, CellReading.Amount(measure, row.Row.Value, row.Row.Unit) ?? ValueRange.Any));
        }
        else if (_members is not null)
        {
            GroupEvents.Add(new GroupEvent(row.Whom == Whom.Herd ? null : row.Mob, kind, day, row.Line, kind is EventKind { IsMobMove: true } ? NameFolding.Fold(row.Row.Value) : null));
            SortEvent(row, day, kind, _members);
        }
    }

    /// <summary>"An animal whose mob is not known on the date of a mob row of an event gets a gap for that kind on that day";
    /// likewise one of whom it is not known whether she was in the herd.</summary>
    /// <remarks>"So too any event's row of a mob: on days on which `mob` is not promised complete it may be anybody's, and is in doubt."</remarks>
    private void SortEvent(RowAsRead row, int day, Kind kind, FarmAsRead farm)
    {
        OfGroups.Add((kind, day));
        var asksMoves = row.Whom == Whom.Mob && kind is EventKind { Effect: HerdEffect.None, IsMobMove: false };
        if (asksMoves && _movesArePromised?.Invoke(day) != true)
        {
            Unread.Add(new Unread(null, kind, day, row.Line) { OfGroup = true });
            return;
        }

        foreach (var animal in _animals)
        {
            var isKept = !asksMoves || (day >= farm.Presence.CoveredFrom(animal.Index) && day <= farm.Presence.CoveredUntil(animal.Index));
            var isMember = Kleene.And(
                farm.Presence.At(animal.Index, day),
                row.Whom == Whom.Herd ? Truth.True
                : kind is EventKind { IsMobMove: true } ? farm.Mobs.MovesWith(animal.Index, row.Mob, day)
                : isKept ? farm.Mobs.IsIn(animal.Index, row.Mob, day) : Truth.Unknown);
            if (isMember == Truth.True && kind.Name is not ("calving" or "abortion"))
            {
                Happenings.Add(row.HappeningOf(animal.Index) with { OfGroup = true });
            }
            else if (isMember != Truth.False)
            {
                // "A mob's or herd's row of a calving or an abortion proves nothing of one animal."
                Unread.Add(new Unread(animal.Index, kind, day, row.Line) { OfGroup = true });
            }
        }
    }
}
