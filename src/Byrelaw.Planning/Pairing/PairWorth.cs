namespace Byrelaw.Planning.Pairing;

/// <summary>What a pair, or several together, are worth: whole numbers, of which the first counts before the second, the second before the third.</summary>
/// <param name="Wished">Wishes of the kind that counts first that are true.</param>
/// <param name="Fresh">Fresh embryos: a straw keeps.</param>
/// <param name="Kept">Pairs of an earlier sheet of the day that stay.</param>
/// <param name="Wanted">What is wanted of the programme, expected, in millionths.</param>
/// <param name="Points">Points of recipients, in thousandths.</param>
public readonly record struct PairWorth(long Wished, long Fresh, long Kept, long Wanted, long Points) : IComparable<PairWorth>
{
    /// <summary>Nothing.</summary>
    public static readonly PairWorth None;

    /// <summary>Both together.</summary>
    public static PairWorth operator +(PairWorth one, PairWorth other) => new(one.Wished + other.Wished, one.Fresh + other.Fresh, one.Kept + other.Kept, one.Wanted + other.Wanted, one.Points + other.Points);

    /// <summary>The one without the other.</summary>
    public static PairWorth operator -(PairWorth one, PairWorth other) => new(one.Wished - other.Wished, one.Fresh - other.Fresh, one.Kept - other.Kept, one.Wanted - other.Wanted, one.Points - other.Points);

    /// <summary>Whether one is worth less than the other.</summary>
    public static bool operator <(PairWorth one, PairWorth other) => one.CompareTo(other) < 0;

    /// <summary>Whether one is worth more than the other.</summary>
    public static bool operator >(PairWorth one, PairWorth other) => one.CompareTo(other) > 0;

    /// <summary>Whether one is worth no more than the other.</summary>
    public static bool operator <=(PairWorth one, PairWorth other) => one.CompareTo(other) <= 0;

    /// <summary>Whether one is worth no less than the other.</summary>
    public static bool operator >=(PairWorth one, PairWorth other) => one.CompareTo(other) >= 0;

    /// <inheritdoc/>
    public int CompareTo(PairWorth other) =>
        Wished != other.Wished ? Wished.CompareTo(other.Wished)
        : Fresh != other.Fresh ? Fresh.CompareTo(other.Fresh)
        : Kept != other.Kept ? Kept.CompareTo(other.Kept)
        : Wanted != other.Wanted ? Wanted.CompareTo(other.Wanted)
        : Points.CompareTo(other.Points);
}
