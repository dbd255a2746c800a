namespace Byrelaw.Language.Rulebooks.Plans;

/// <summary>Which heats serve a transfer: a recipient takes an embryo on certain days after hers, and only one that is about as old as her day.</summary>
/// <param name="Transfers">The transfer days, in order; at least one.</param>
/// <param name="DayFrom">Earliest day after her heat.</param>
/// <param name="DayTo">Latest.</param>
/// <param name="Within">And no further than so many days from the embryo's age; null where that is not asked.</param>
/// <param name="EmbryoAge">How old the embryos are on the first transfer day; a day older on each later one where <paramref name="Grows"/>.</param>
/// <param name="Grows">Whether the embryos grow older from one transfer day to the next: fresh ones do, frozen ones do not.</param>
public sealed record HeatWindow(ImmutableArray<LocalDate> Transfers, int DayFrom, int DayTo, int? Within = null, int EmbryoAge = 0, bool Grows = false)
{
    /// <summary>The window of a session, by the programme's recipient days.</summary>
    /// <param name="aims">Of the programme.</param>
    /// <param name="collection">The day of collection or flush; null for frozen embryos.</param>
    /// <param name="first">The first day of transfers.</param>
    /// <param name="final">The last.</param>
    public static HeatWindow Of(Aims aims, LocalDate? collection, LocalDate first, LocalDate final)
    {
        ArgumentNullException.ThrowIfNull(aims);
        return new([.. Days(first, final)], aims.RecipientDayFrom, aims.RecipientDayTo, aims.WithinDaysOfEmbryo, aims.EmbryoAgeOn(first, collection), collection is not null);
    }

    /// <summary>The first heat date that serves; null where none does, for the embryos are never about as old as a recipient's day may be.</summary>
    public LocalDate? First => Heats.Select(heat => (LocalDate?)heat).FirstOrDefault();

    /// <summary>The last; null likewise.</summary>
    public LocalDate? Last => Heats.Select(heat => (LocalDate?)heat).LastOrDefault();

    /// <summary>The first date that the days of a recipient let in, whatever the age of the embryos.</summary>
    public LocalDate Earliest => Transfers[0].PlusDays(-DayTo);

    /// <summary>The last.</summary>
    public LocalDate Latest => Transfers[^1].PlusDays(-DayFrom);

    /// <summary>All heat dates that serve at least one transfer day, in order.</summary>
    public IEnumerable<LocalDate> Heats => Days(Earliest, Latest).Where(Serves);

    /// <summary>The heat date that suits best: recipients then are as many days from theirs as the first day's embryos are old.</summary>
    public LocalDate Target => Transfers[0].PlusDays(-Math.Clamp(EmbryoAge, DayFrom, DayTo));

    /// <summary>Whether a heat on a date serves any transfer day.</summary>
    public bool Serves(LocalDate heat) => ServedBy(heat).Any();

    /// <summary>The transfer days on which an animal in heat on a date can take an embryo.</summary>
    public IEnumerable<LocalDate> ServedBy(LocalDate heat) => Transfers.Where(transfer =>
        Period.DaysBetween(heat, transfer) is var day && day >= DayFrom && day <= DayTo && (Within is not { } near || Math.Abs(day - Age(transfer)) <= near));

    /// <summary>Day 0 of a treatment: the start with most heats in the window; of equals the one whose heats lie nearest to the target, and of those the later.</summary>
    /// <param name="method">For recipients, and not natural heat.</param>
    public LocalDate StartOf(Method method)
    {
        ArgumentNullException.ThrowIfNull(method);
        var spread = HeatsBy(method);
        var (earliest, latest) = ((First ?? Earliest).PlusDays(-spread.Max(heat => heat.Day)), (Last ?? Latest).PlusDays(-spread.Min(heat => heat.Day)));
        return Days(earliest, latest)
            .OrderByDescending(start => Math.Round(spread.Where(heat => Serves(start.PlusDays(heat.Day))).Sum(heat => heat.Share), 9))
            .ThenBy(start => Math.Round(spread.Sum(heat => heat.Share * Math.Abs(Period.DaysBetween(Target, start.PlusDays(heat.Day)))), 9))
            .ThenByDescending(start => start)
            .First();
    }

    /// <summary>The days of a treatment on which heats come, with the share of all heats on each.</summary>
    public static ImmutableArray<(int Day, double Share)> HeatsBy(Method method)
    {
        ArgumentNullException.ThrowIfNull(method);
        return method.InHeat is { Days: { IsEmpty: false } days } ? days : [(method.HeatDay ?? 0, 1.0)];
    }

    private int Age(LocalDate transfer) => EmbryoAge + (Grows ? Period.DaysBetween(Transfers[0], transfer) : 0);

    private static IEnumerable<LocalDate> Days(LocalDate first, LocalDate last)
    {
        for (var day = first; day <= last; day = day.PlusDays(1))
        {
            yield return day;
        }
    }
}
