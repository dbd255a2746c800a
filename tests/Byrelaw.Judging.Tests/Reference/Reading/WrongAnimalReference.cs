namespace Byrelaw.Judging.Tests.Reference;

/// <summary>
/// Doubt 6: "an entry of a kind for females of a male; an entry more than 0 days after she left for good: as a row whose animal cannot be
/// read (that kind, every animal, that day)."
/// </summary>
public static class WrongAnimalReference
{
    private static readonly string[] OfFemales =
        ["calving", "abortion", "heat", "mating", "transfer", "pregnancy test", "retained membranes", "metritis", "egg collection"];

    public static bool IsSurely(RowAsRead row, IReadOnlyList<RowAsRead> rows, IReadOnlyList<AnimalAsRead> animals)
    {
        if (!IsEntry(row) || row.Kind is EventKind { Effect: not HerdEffect.None } or EventKind { IsMobMove: true })
        {
            return false;
        }

        if (OfFemales.Contains(row.Kind!.Name) && animals[row.Animal].IsFemale == false)
        {
            return true;
        }

        var letsBullIn = row.Kind!.Name == "bull in";
        if (letsBullIn && animals[row.Animal].IsSteer)
        {
            return true;
        }

        // "A bull that was sold is let in by no row": of him a sale is as good as a death.
        var hers = rows.Where(other => IsEntry(other) && other.Animal == row.Animal && other.Kind is EventKind { Effect: not HerdEffect.None })
            .Select(other => (other.Day, Kind: (EventKind)other.Kind!)).ToList();
        var left = hers.Where(change => change.Day < row.Day && change.Kind.Effect == HerdEffect.Leaves && (change.Kind.IsForGood || (letsBullIn && animals[row.Animal].IsFemale != true)))
            .Max(change => change.Day);
        var joined = hers.Where(change => change.Day <= row.Day && change.Kind.Effect == HerdEffect.Joins).Max(change => change.Day);
        return left is { } day && !(joined >= day);
    }

    /// <summary>
    /// "A `mob` row of a male who is out: his presence is not known from the leaving on": one of the two rows is wrong, so on the day he left there
    /// may be a row, which nobody can read, that says he came back.
    /// </summary>
    public static IEnumerable<RowAsRead> MayBeBack(IReadOnlyList<RowAsRead> rows, IReadOnlyList<AnimalAsRead> animals, Vocabulary vocabulary)
    {
        var joins = vocabulary.Kinds.FirstOrDefault(kind => kind is EventKind { Effect: HerdEffect.Joins });
        foreach (var move in rows.Where(row => IsEntry(row) && row.Kind is EventKind { IsMobMove: true } && animals[row.Animal].IsFemale != true && !animals[row.Animal].IsSteer))
        {
            var his = rows.Where(other => IsEntry(other) && other.Animal == move.Animal && other.Day <= move.Day).ToList();
            var left = his.Where(other => other.Day < move.Day && other.Kind is EventKind { Effect: HerdEffect.Leaves }).Max(other => other.Day);
            if (joins is not null && left is { } day && !his.Any(other => other.Day >= day && other.Kind is EventKind { Effect: HerdEffect.Joins }))
            {
                yield return move with { Kind = joins, Day = day, Row = move.Row with { Recorded = "?" } };
            }
        }
    }

    private static bool IsEntry(RowAsRead row) => row is { Whom: Whom.One, Day: not null, Kind: not null, RestCanBeRead: true };
}
