namespace Byrelaw.Records.Herds;

/// <summary>The orders in which gaps are kept. Each tells any two apart, so it does not matter how they are sorted.</summary>
internal static class GapOrder
{
    /// <summary>By kind, animal and first day.</summary>
    public static Gap[] ByKind(IEnumerable<Gap> gaps)
    {
        Gap[] sorted = [.. gaps];
        Array.Sort(sorted, static (one, other) => one.Kind != other.Kind ? one.Kind.CompareTo(other.Kind)
            : one.Animal != other.Animal ? one.Animal.CompareTo(other.Animal) : ByDay(one, other));
        return sorted;
    }

    /// <summary>By first day.</summary>
    public static Gap[] ByFirstDay(IEnumerable<Gap> gaps)
    {
        Gap[] sorted = [.. gaps];
        Array.Sort(sorted, static (one, other) => ByDay(one, other) is not 0 and var order ? order
            : one.Kind != other.Kind ? one.Kind.CompareTo(other.Kind) : one.Animal.CompareTo(other.Animal));
        return sorted;
    }

    private static int ByDay(in Gap one, in Gap other) => one.From != other.From ? one.From.CompareTo(other.From)
        : one.Line != other.Line ? one.Line.CompareTo(other.Line)
        : one.To != other.To ? one.To.CompareTo(other.To)
        : Marks(one).CompareTo(Marks(other));

    private static int Marks(in Gap gap) => (gap.IsHint ? 16 : 0) + (gap.IsOfDetails ? 8 : 0) + (gap.IsOfDouble ? 4 : 0) + (gap.IsTooNear ? 2 : 0) + (gap.IsLostStart ? 1 : 0);
}
