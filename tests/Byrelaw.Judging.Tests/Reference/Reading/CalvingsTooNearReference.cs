namespace Byrelaw.Judging.Tests.Reference;

/// <summary>
/// "Two calvings of one cow fewer than 200 days apart: one of the two is wrong, so whether she calved on the later day is not known." So it is after a calving of hers of which something cannot be read, and after a
/// row that may be a calving or a service of hers, and after a service or an embryo on record in these days, unless a service, an embryo or a bull of hers is on record 200 to 320 days before the later one.
/// </summary>
public sealed class CalvingsTooNearReference(IReadOnlyList<AnimalAsRead> animals, Vocabulary words, IReadOnlyList<Happening> happenings, IReadOnlyList<Unread> unread)
{
    /// <summary>What happened, without them.</summary>
    public IReadOnlyList<Happening> Believed => [.. happenings.Where(row => !IsTooNear(row))];

    /// <summary>What is in doubt, they among it.</summary>
    public IReadOnlyList<Unread> Doubted => [.. unread, .. happenings.Where(IsTooNear).Select(row => new Unread(row.Animal, row.Kind, row.Day, row.Line) { IsTooNear = true })];

    private bool IsTooNear(Happening row)
    {
        if (words.Calving is not { } calving || row.Kind.Id != calving.Id)
        {
            return false;
        }

        var (first, last) = (row.Day - 199, row.Day - 1);
        return Hers(row, calving).Any(day => day >= first && day <= last)
            || unread.Any(other => other.Animal == row.Animal && other.Kind?.Id == calving.Id && other is { OfGroup: false, SheetTo: null } && other.MayBeIn(first, last))
            || ((Services.Any(kind => Hers(row, kind).Any(day => day >= first && day <= last))
                || unread.Any(other => other.MayBeOf(animals[row.Animal]) && Services.Append(calving).Any(other.MayBeA) && other.MayBeIn(first, last))) && !HasFather(row));
    }

    private bool HasFather(Happening calving)
    {
        var (first, last) = (calving.Day - 320, calving.Day - 200);
        return Services.Any(kind => Hers(calving, kind).Any(day => day >= first && day <= last))
            || words.Spells.Where(spell => spell.WithMaleFrom is not null).Any(spell => Hers(calving, spell.From).Any(start =>
                start <= last && !Hers(calving, spell.Until).Any(end => end >= start && end < first)));
    }

    private IEnumerable<Kind> Services => new[] { "mating", "transfer" }.Select(words.FindKind).OfType<Kind>();

    private IEnumerable<int> Hers(Happening row, Kind kind) => happenings.Where(other => other.Animal == row.Animal && other.Kind.Id == kind.Id).Select(other => other.Day);
}
