namespace Byrelaw.Judging.Tests.Reference;

/// <summary>Days as whole numbers, so that "every day from A to B" is a plain loop.</summary>
public static class DayNumber
{
    private static readonly LocalDate First = new(1900, 1, 1);

    /// <summary>The number of a date.</summary>
    public static int Of(LocalDate date) => Period.DaysBetween(First, date);

    /// <summary>The date of a number.</summary>
    public static LocalDate Date(int day) => First.PlusDays(day);
}
