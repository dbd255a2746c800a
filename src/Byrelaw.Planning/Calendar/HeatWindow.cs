namespace Byrelaw.Planning.Calendar;

/// <summary>Which heats serve a transfer: a recipient takes an embryo on certain days after hers.</summary>
/// <param name="Transfers">The transfer days, in order; at least one.</param>
/// <param name="DayFrom">Earliest day after her heat.</param>
/// <param name="DayTo">Latest.</param>
public sealed record HeatWindow(ImmutableArray<LocalDate> Transfers, int DayFrom, int DayTo)
{
    /// <summary>The window of a round, by the programme's recipient days.</summary>
    public static HeatWindow Of(Round round)
    {
        ArgumentNullException.ThrowIfNull(round);
        var aims = round.Programme.Aims;
        return new([.. round.TransferDays], aims.RecipientDayFrom, aims.RecipientDayTo);
    }

    /// <summary>The first heat date that serves.</summary>
    public LocalDate First => Transfers[0].PlusDays(-DayTo);

    /// <summary>The last.</summary>
    public LocalDate Last => Transfers[^1].PlusDays(-DayFrom);

    /// <summary>All heat dates that serve at least one transfer day, in order.</summary>
    public IEnumerable<LocalDate> Heats => DayRuns.From(First, Last).Where(Serves);

    /// <summary>Whether a heat on a date serves any transfer day.</summary>
    public bool Serves(LocalDate heat) => ServedBy(heat).Any();

    /// <summary>The transfer days on which an animal in heat on a date can take an embryo.</summary>
    public IEnumerable<LocalDate> ServedBy(LocalDate heat) => Transfers.Where(transfer => Period.DaysBetween(heat, transfer) is var day && day >= DayFrom && day <= DayTo);
}
