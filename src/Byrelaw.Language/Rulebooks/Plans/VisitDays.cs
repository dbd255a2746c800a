namespace Byrelaw.Language.Rulebooks.Plans;

/// <summary>Works out on which days a team comes.</summary>
public static class VisitDays
{
    /// <summary>More days than anyone plans, so that no file can take long.</summary>
    private const int MostDays = 4000;

    /// <summary>All days on which the visits of a name come to a region, in order, days off left out.</summary>
    /// <param name="visits">All visits.</param>
    /// <param name="name">What the team comes for.</param>
    /// <param name="region">The region; null takes visits everywhere and of every region.</param>
    /// <param name="holidays">Public holidays.</param>
    public static ImmutableArray<LocalDate> Of(
        ImmutableArray<Visits> visits, string name, string? region, ImmutableArray<Holiday> holidays) => [.. Days(visits, name, region, holidays, [])];

    /// <summary>Whether a team that would come on a day stays away.</summary>
    public static bool IsOff(DaysOff off, LocalDate day, ImmutableArray<Holiday> holidays)
    {
        ArgumentNullException.ThrowIfNull(off);
        return off.Dates.Contains(day) || off.Weekdays.Contains(day.DayOfWeek) || (off.Holidays && holidays.Any(holiday => holiday.Date == day));
    }

    /// <summary>The visits of a name that count in a region.</summary>
    public static IEnumerable<Visits> Named(ImmutableArray<Visits> visits, string name, string? region) => visits.Where(one =>
        NameFolding.Fold(one.Name) == NameFolding.Fold(name)
        && (region is null || one.Region is null || NameFolding.Fold(one.Region) == NameFolding.Fold(region)));

    /// <summary>Days already worked out are remembered; visits that come after themselves have none.</summary>
    private static SortedSet<LocalDate> Days(
        ImmutableArray<Visits> visits, string name, string? region, ImmutableArray<Holiday> holidays, Dictionary<string, SortedSet<LocalDate>> known)
    {
        var key = NameFolding.Fold(name);
        if (known.TryGetValue(key, out var found))
        {
            return found;
        }

        known[key] = [];
        var days = new SortedSet<LocalDate>();
        foreach (var one in Named(visits, name, region))
        {
            days.UnionWith(one.Schedules
                .SelectMany(schedule => schedule switch
                {
                    EveryVisit every => Every(every).Take(MostDays),
                    VisitDates dates => dates.Dates,
                    AfterVisits after => Days(visits, after.Name, region, holidays, known).Select(after.Wait.After),
                    _ => [],
                })
                .Where(day => !IsOff(one.DaysOff, day, holidays)));
        }

        return known[key] = days;
    }

    // Each is reckoned from the first, so that monthly visits keep their day of the month.
    private static IEnumerable<LocalDate> Every(EveryVisit every)
    {
        for (var i = 0; ; i++)
        {
            var day = new TimeLength(every.Every.Count * i, every.Every.Unit).After(every.From);
            if (day > every.To)
            {
                yield break;
            }

            yield return day;
        }
    }
}
