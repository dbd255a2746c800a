namespace Byrelaw.Planning.Calendar;

/// <summary>Runs of days.</summary>
internal static class DayRuns
{
    /// <summary>All days from one to another, both included.</summary>
    public static IEnumerable<LocalDate> From(LocalDate first, LocalDate last)
    {
        for (var day = first; day <= last; day = day.PlusDays(1))
        {
            yield return day;
        }
    }
}
