namespace Byrelaw.Language.Reasoning;

/// <summary>
/// Something that must hold of two quantities of one animal on the day of judging: <c>X - Y</c> is at most <see cref="AtMost"/>.
/// Quantity 0 is always nought, so a plain limit is a bound against it.
/// </summary>
/// <param name="X">A quantity.</param>
/// <param name="Y">Another.</param>
/// <param name="AtMost">What holds however months may fall: to show that something cannot be.</param>
/// <param name="Surely">What is enough however months may fall: to make an animal up.</param>
/// <param name="Length">The limit as written, where it is one in months against nought; else null.</param>
/// <param name="From">The condition that says so; null for what holds of every animal.</param>
internal sealed record Bound(int X, int Y, double AtMost, double Surely, DaysLong? Length, Condition? From)
{
    /// <summary><paramref name="x"/> is at most a number.</summary>
    public static Bound Below(int x, double limit, Condition? from) => new(x, Quantities.Nought, limit, limit, null, from);

    /// <summary><paramref name="x"/> is at least a number.</summary>
    public static Bound Above(int x, double limit, Condition? from) => new(Quantities.Nought, x, -limit, -limit, null, from);

    /// <summary>A time is at most so long.</summary>
    public static Bound Below(int x, DaysLong limit, Condition? from) => new(x, Quantities.Nought, limit.Most, limit.Fewest, Written(limit), from);

    /// <summary>A time is at least so long.</summary>
    public static Bound Above(int x, DaysLong limit, Condition? from) => new(Quantities.Nought, x, -limit.Fewest, -limit.Most, Written(limit), from);

    /// <summary><paramref name="x"/> is at least <paramref name="y"/> and so long more.</summary>
    public static Bound Longer(int x, int y, DaysLong by, Condition? from) => new(y, x, -by.Fewest, -by.Most, null, from);

    /// <summary><paramref name="x"/> is at most <paramref name="y"/> and so long more.</summary>
    public static Bound NotLonger(int x, int y, DaysLong by, Condition? from) => new(x, y, by.Most, by.Fewest, null, from);

    private static DaysLong? Written(DaysLong limit) => limit.Months == 0 ? null : limit;
}

/// <summary>A text about an animal (a fact, a test's latest answer) is one of some, or is none of them.</summary>
/// <param name="Text">Which text.</param>
/// <param name="Values">Folded.</param>
/// <param name="IsNot">True where it is none of them.</param>
/// <param name="From">The condition that says so; null for what holds of every animal.</param>
internal sealed record OneOf(int Text, IReadOnlyList<string> Values, bool IsNot, Condition? From);
