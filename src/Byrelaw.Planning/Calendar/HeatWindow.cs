namespace Byrelaw.Planning.Calendar;

/// <summary>Which heats serve a transfer: a recipient takes an embryo on certain days after hers, and only one that is about as old as her day.</summary>
/// <param name="Transfers">The transfer days, in order; at least one.</param>
/// <param name="DayFrom">Earliest day after her heat.</param>
/// <param name="DayTo">Latest.</param>
/// <param name="Within">And no further than so many days from the embryo's age; null where that is not asked.</param>
/// <param name="EmbryoAge">How old the embryos are on the first transfer day; a day older on each later one where <paramref name="Grows"/>.</param>
/// <param name="Grows">Whether the embryos grow older from one transfer day to the next: fresh ones do, frozen ones do not.</param>
public sealed record HeatWindow(ImmutableArray<LocalDate> Transfers, int DayFrom, int DayTo, int? Within = null, int EmbryoAge = 0, bool Grows = false)
{
    /// <summary>The window of a round, by the programme's recipient days.</summary>
    public static HeatWindow Of(Round round)
    {
        ArgumentNullException.ThrowIfNull(round);
        var aims = round.Programme.Aims;
        return new(
            [.. round.TransferDays], aims.RecipientDayFrom, aims.RecipientDayTo, aims.WithinDaysOfEmbryo, round.EmbryoAge(round.FirstTransfer), round.Collection is not null);
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
    public IEnumerable<LocalDate> Heats => DayRuns.From(Earliest, Latest).Where(Serves);

    /// <summary>Whether a heat on a date serves any transfer day.</summary>
    public bool Serves(LocalDate heat) => ServedBy(heat).Any();

    /// <summary>The transfer days on which an animal in heat on a date can take an embryo.</summary>
    public IEnumerable<LocalDate> ServedBy(LocalDate heat) => Transfers.Where(transfer =>
        Period.DaysBetween(heat, transfer) is var day && day >= DayFrom && day <= DayTo && (Within is not { } near || Math.Abs(day - Age(transfer)) <= near));

    private int Age(LocalDate transfer) => EmbryoAge + (Grows ? Period.DaysBetween(Transfers[0], transfer) : 0);
}
