namespace Byrelaw.Records.Cells;

/// <summary>Day numbers of calendar dates, without a calendar library in the inner loop.</summary>
internal static class CivilDate
{
    /// <summary>Years before this are slips of the pen, not records of living animals.</summary>
    public const int FirstYear = 1900;

    /// <summary>The last year that a date may have.</summary>
    public const int LastYear = 9998;

    /// <summary>Whether there is such a day in the years that dates may have.</summary>
    public static bool Exists(int year, int month, int day) =>
        year is >= FirstYear and <= LastYear && month is >= 1 and <= 12 && day >= 1 && (day <= 28 || day <= DateTime.DaysInMonth(year, month));

    /// <summary>Days since 1 January 1970 in the Gregorian calendar.</summary>
    public static int DayNumber(int year, int month, int day)
    {
        // The year is taken to start in March, so that the leap day is its last.
        var y = month <= 2 ? year - 1 : year;
        var era = y / 400;
        var yearOfEra = y - (era * 400);
        var dayOfYear = (((153 * (month + (month > 2 ? -3 : 9))) + 2) / 5) + day - 1;
        var dayOfEra = (yearOfEra * 365) + (yearOfEra / 4) - (yearOfEra / 100) + dayOfYear;
        return (era * 146097) + dayOfEra - 719468;
    }
}
