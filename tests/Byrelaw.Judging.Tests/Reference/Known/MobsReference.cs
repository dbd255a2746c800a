namespace Byrelaw.Judging.Tests.Reference;

/// <summary>
/// Who is in which mob. "<c>mob</c> is an event whose value is the mob's name; the <c>mob</c> column of
/// <c>animals.csv</c> holds only for an animal with no mob event." A row that may be a mob event is one.
/// </summary>
public sealed class MobsReference
{
    private readonly FarmAsRead _farm;
    private readonly Dictionary<int, List<Happening>> _moves;
    private readonly List<Unread> _unread;
    private readonly Dictionary<(int Animal, int Day), string?> _found = [];
    private readonly Dictionary<(int Animal, int Day), int> _since = [];

    public MobsReference(FarmAsRead farm, RowSorting rows)
    {
        _farm = farm;
        _unread = [.. rows.Unread.Where(row => row.MayMove)];
        _moves = rows.Happenings.Where(row => row.Mob is not null).GroupBy(row => row.Animal).ToDictionary(rows => rows.Key, rows => rows.ToList());
    }

    /// <summary>Her mob on a day, folded; null where it is not known.</summary>
    public string? At(int animal, int day)
    {
        if (!_found.TryGetValue((animal, day), out var found))
        {
            found = Find(animal, day);
            _found[(animal, day)] = found;
        }

        return found;
    }

    private string? Find(int animal, int day)
    {
        var moves = (_moves.GetValueOrDefault(animal) ?? []).Where(move => move.Day <= day).ToList();
        var hidden = _unread.Where(row => row.MayBeOf(_farm.Animals[animal])).ToList();
        if (moves.Count == 0)
        {
            // That her mob moved as a whole says nothing against her cell: it is how she was in that mob.
            return hidden.Count == 0 && !(_moves.GetValueOrDefault(animal) ?? []).Any(move => !move.OfGroup) ? _farm.Animals[animal].Mob : null;
        }

        var last = moves.Max(move => move.Day);
        var names = moves.Where(move => move.Day == last).Select(move => move.Mob).Distinct().ToList();
        return names.Count > 1 || hidden.Any(row => row.MayBeIn(last, day)) ? null : names[0];
    }

    /// <summary>Whether a row that cannot be read, or two that contradict each other, may have moved her anywhere: not one who has only not moved yet.</summary>
    public bool MayBeAnywhere(int animal, int day)
    {
        if (At(animal, day) is not null)
        {
            return false;
        }

        var moves = _moves.GetValueOrDefault(animal) ?? [];
        var hidden = _unread.Where(row => row.MayBeOf(_farm.Animals[animal])).ToList();
        return moves.Exists(move => move.Day <= day) || hidden.Exists(row => moves.TrueForAll(move => move.OfGroup) || row.MayBeIn(int.MinValue, day));
    }

    /// <summary>"A mob's move takes those who were in it the day before, and those who moved into it on that day."</summary>
    public Truth MovesWith(int animal, string mob, int day) =>
        Kleene.Or(IsIn(animal, mob, day - 1), Kleene.Of((_moves.GetValueOrDefault(animal) ?? []).Any(move => move.Day == day && move.Mob == mob)));

    /// <summary>Whether she is in a mob on a day.</summary>
    public Truth IsIn(int animal, string mob, int day) => At(animal, day) is { } hers ? Kleene.Of(hers == mob) : Truth.Unknown;

    /// <summary>"... on days when the judged animal was, then and on d without a break of stay, in the mob she is in on d":
    /// the first such day.</summary>
    public int StaysSince(int animal, string mob, int day, int dawn)
    {
        if (!_since.TryGetValue((animal, day), out var since))
        {
            since = day;
            while (since > dawn && At(animal, since - 1) == mob && !_since.TryGetValue((animal, since - 1), out _))
            {
                since--;
            }

            since = since > dawn && At(animal, since - 1) == mob ? _since[(animal, since - 1)] : since;
            _since[(animal, day)] = since;
        }

        return since;
    }
}
