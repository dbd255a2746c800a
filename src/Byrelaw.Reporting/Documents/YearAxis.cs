namespace Byrelaw.Reporting.Documents;

/// <summary>Days from left to right, the same for every drawing of a page.</summary>
/// <param name="First">The first day.</param>
/// <param name="Last">The last.</param>
/// <param name="Today">The day that the records reach; null where they reach none.</param>
/// <param name="Transfers">The first day of each session's transfers.</param>
public sealed record YearAxis(LocalDate First, LocalDate Last, LocalDate? Today, ImmutableArray<LocalDate> Transfers)
{
    /// <summary>How many days it has.</summary>
    public int Days => Period.DaysBetween(First, Last) + 1;

    /// <summary>Where a day lies, in days from the left, within the axis.</summary>
    public int At(LocalDate day) => Math.Clamp(Period.DaysBetween(First, day), 0, Days);

    /// <summary>Where a day lies, in per cent of the width.</summary>
    public double PerCent(LocalDate day) => Math.Round(100.0 * At(day) / Days, 1);

    /// <summary>Whether a day lies on it.</summary>
    public bool Holds(LocalDate day) => day >= First && day <= Last;

    /// <summary>The first day of each month on it.</summary>
    public IEnumerable<LocalDate> Months()
    {
        for (var month = new LocalDate(First.Year, First.Month, 1).PlusMonths(1); month <= Last; month = month.PlusMonths(1))
        {
            yield return month;
        }
    }
}

/// <summary>What a mark on an axis stands for.</summary>
public enum DayMarkKind
{
    /// <summary>She calved.</summary>
    Calved,

    /// <summary>A heat.</summary>
    Heat,

    /// <summary>Served, or an embryo put in.</summary>
    Served,

    /// <summary>Looked at or tested.</summary>
    Looked,

    /// <summary>Ill, lame, or anything else that a rule of the list does not want.</summary>
    Unwanted,

    /// <summary>Days on which all rules hold.</summary>
    Holds,

    /// <summary>Days on which it is not known.</summary>
    NotKnown,

    /// <summary>Days on which some rule fails.</summary>
    Fails,
}

/// <summary>A day or a stretch of days on an axis.</summary>
/// <param name="Kind">What it stands for.</param>
/// <param name="From">In days from the left.</param>
/// <param name="To">The day after the last, for a stretch; else the same.</param>
public readonly record struct DayMark(DayMarkKind Kind, int From, int To);
