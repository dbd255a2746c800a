namespace Byrelaw.Records.Herds;

/// <summary>Holes by kind, animal and first day, so that those of an animal are found by halves.</summary>
/// <param name="holes">In that order.</param>
internal sealed class HolesInOrder(Hole[] holes)
{
    /// <summary>All of them.</summary>
    public Hole[] All => holes;

    /// <summary>Whether one of the animal, or of everyone, holds a day of these.</summary>
    public bool Any(int animal, int kind, int from, int to) => holes.Length > 0 && (AnyOf(-1, kind, from, to) || AnyOf(animal, kind, from, to));

    /// <summary>Those of a kind that an animal has, her own and everyone's.</summary>
    public IEnumerable<Hole> Of(int animal, int kind)
    {
        foreach (var whose in holes.Length == 0 ? [] : new[] { -1, animal })
        {
            for (var place = First(kind, whose); IsOf(place, kind, whose); place++)
            {
                yield return holes[place];
            }
        }
    }

    /// <summary>The first day after a day on which one of this animal and kind begins or is over; int.MaxValue for none.</summary>
    public int NextEdge(int animal, int kind, int day) => holes.Length == 0 ? int.MaxValue : Math.Min(NextEdgeOf(-1, kind, day), NextEdgeOf(animal, kind, day));

    private int NextEdgeOf(int animal, int kind, int day)
    {
        var edge = int.MaxValue;
        for (var place = First(kind, animal); IsOf(place, kind, animal); place++)
        {
            var hole = holes[place];
            edge = hole.From > day ? Math.Min(edge, hole.From) : hole.To >= day && hole.To < Day.End ? Math.Min(edge, hole.To + 1) : edge;
        }

        return edge;
    }

    private bool AnyOf(int animal, int kind, int from, int to)
    {
        for (var place = First(kind, animal); IsOf(place, kind, animal); place++)
        {
            if (holes[place].From <= to && holes[place].To >= from)
            {
                return true;
            }
        }

        return false;
    }

    private bool IsOf(int place, int kind, int animal) => place < holes.Length && holes[place].Kind == kind && holes[place].Animal == animal;

    /// <summary>The place of the first hole of a kind and animal.</summary>
    private int First(int kind, int animal)
    {
        var (low, high) = (0, holes.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            ref readonly var hole = ref holes[middle];
            var isBefore = hole.Kind != kind ? hole.Kind < kind : hole.Animal < animal;
            (low, high) = isBefore ? (middle + 1, high) : (low, middle);
        }

        return low;
    }
}
