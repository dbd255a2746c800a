namespace Byrelaw.Records.Herds;

/// <summary>
/// Dates as whole numbers, days since 1 January 1970, for the columns of a herd and the loops
/// that read them. Everywhere else a date is a <see cref="LocalDate"/>.
/// </summary>
public static class Day
{
    /// <summary>Before every date.</summary>
    public const int Start = -1_000_000;

    /// <summary>After every date.</summary>
    public const int End = 3_000_000;

    private static readonly LocalDate Epoch = new(1970, 1, 1);

    /// <summary>The number of a date.</summary>
    public static int Number(LocalDate date) => Period.DaysBetween(Epoch, date);

    /// <summary>The date of a number that is neither <see cref="Start"/> nor <see cref="End"/>.</summary>
    public static LocalDate Date(int number) => Epoch.PlusDays(number);
}
