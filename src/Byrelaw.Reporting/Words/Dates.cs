namespace Byrelaw.Reporting.Words;

/// <summary>Dates as people write them: 20 October 2026, or 7 Sep where there is little room.</summary>
public static class Dates
{
    private static readonly string[] Months =
    [
        "January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December",
    ];

    /// <summary><c>20 October 2026</c>.</summary>
    public static string Long(LocalDate date) => $"{DayAndMonth(date)} {date.Year}";

    /// <summary><c>Tuesday 20 October 2026</c>.</summary>
    public static string WithWeekday(LocalDate date) => $"{date.DayOfWeek} {Long(date)}";

    /// <summary><c>20 October</c>, with the year where it is not <paramref name="thisYear"/>.</summary>
    public static string Long(LocalDate date, int thisYear) => date.Year == thisYear ? DayAndMonth(date) : Long(date);

    /// <summary><c>7 Sep</c>, with the year where it is not <paramref name="thisYear"/>.</summary>
    public static string Short(LocalDate date, int thisYear)
    {
        var text = $"{date.Day} {ShortMonth(date.Month)}";
        return date.Year == thisYear ? text : $"{text} {date.Year}";
    }

    /// <summary>A month in three letters, from 1.</summary>
    public static string ShortMonth(int month) => Months[month - 1][..3];

    /// <summary>One day, two days or a stretch, said once as far as they agree:
    /// <c>20 and 21 October 2026</c>, <c>30 October to 2 November 2026</c>.</summary>
    public static string Range(LocalDate from, LocalDate to)
    {
        if (to <= from)
        {
            return Long(from);
        }

        var join = from.PlusDays(1) == to ? "and" : "to";
        var first = from.Year != to.Year ? Long(from)
            : from.Month != to.Month ? DayAndMonth(from)
            : $"{from.Day}";
        return $"{first} {join} {Long(to)}";
    }

    private static string DayAndMonth(LocalDate date) => $"{date.Day} {Months[date.Month - 1]}";
}
