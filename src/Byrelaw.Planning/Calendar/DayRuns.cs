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

    /// <summary>Days in order, as runs.</summary>
    public static ImmutableArray<DateInterval> Of(IEnumerable<LocalDate> days)
    {
        var runs = ImmutableArray.CreateBuilder<DateInterval>();
        foreach (var day in days)
        {
            if (runs.Count > 0 && runs[^1].End.PlusDays(1) == day)
            {
                runs[^1] = new(runs[^1].Start, day);
            }
            else
            {
                runs.Add(new(day, day));
            }
        }

        return runs.ToImmutable();
    }
}
