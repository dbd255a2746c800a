namespace Byrelaw.Judging.Tests.Reference;

/// <summary>
/// "The known day. <c>complete for</c> reaches up to the known day: <c>up to DATE</c> under <c>records</c>, else
/// <c>--known-on</c>, else the latest <c>recorded</c> date, else the latest event." Where both are given, the earlier; "a blank
/// <c>recorded</c> means entered on its date".
/// </summary>
public static class KnownDay
{
    public static int Of(RecordKeeping? keeping, LocalDate? knownOn, IEnumerable<EventRow> rows, IEnumerable<AnimalAsRead> animals)
    {
        var given = new[] { keeping?.UpTo, knownOn }.OfType<LocalDate>().Select(DayNumber.Of).ToList();
        if (given.Count > 0)
        {
            return given.Min();
        }

        // "A day over a year after all others, no `up to`: of any day." Of two days alone either may be the slip.
        var days = rows.Where(row => row.SheetRow.Length == 0).Select(Entered).OfType<int>().Distinct().OrderDescending().ToList();
        while (days.Count > 2 && days[0] - days[1] > 366)
        {
            days.RemoveAt(0);
        }

        // Without a single row there are only births.
        return days.DefaultIfEmpty(animals.Select(animal => animal.BornFirst).OfType<int>().DefaultIfEmpty(DayNumber.Of(new LocalDate(1970, 1, 1))).Max()).Max();
    }

    /// <summary>The day up to which births are known: "facts and completeness are today's", whatever day is asked about.</summary>
    public static int Today(RecordKeeping? keeping, LocalDate? knownOn, IReadOnlyList<EventRow> rows, IReadOnlyList<AnimalAsRead> animals) =>
        Math.Max(Of(keeping, null, rows, animals), knownOn is null ? int.MinValue : Of(keeping, knownOn, rows, animals));

    /// <summary>
    /// "Under <c>--known-on D</c> ... rows entered after D are not seen; a blank <c>recorded</c> means entered on its date."
    /// A row of which neither can be read is seen: it may have been entered in time.
    /// </summary>
    public static bool IsSeen(EventRow row, LocalDate? knownOn)
    {
        if (knownOn is not { } day)
        {
            return true;
        }

        return Entered(row) is not { } entered || entered <= DayNumber.Of(day);
    }

    private static int? Entered(EventRow row) => CellReading.Day(row.Recorded) ?? CellReading.Day(row.Date);
}
