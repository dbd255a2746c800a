namespace Byrelaw.Reporting.Words;

/// <summary>The day that the records reach, in words; and what to say where they reach none.</summary>
public static class ReachWords
{
    /// <summary><c>records to 20 September 2026</c>.</summary>
    public static string Of(Herd herd)
    {
        ArgumentNullException.ThrowIfNull(herd);
        return herd.ReachesADay ? $"records to {Dates.Long(herd.KnownDay)}" : "no record with a date could be read";
    }

    /// <summary>The same for the head of a page.</summary>
    public static HeadFact Fact(Herd herd)
    {
        ArgumentNullException.ThrowIfNull(herd);
        return herd.ReachesADay ? new("records to", Dates.Long(herd.KnownDay)) : new("", Of(herd));
    }

    /// <summary><c>20 September 2026</c>, or <c>none: no record with a date could be read</c>.</summary>
    public static string Day(Herd herd)
    {
        ArgumentNullException.ThrowIfNull(herd);
        return herd.ReachesADay ? Dates.Long(herd.KnownDay) : $"none: {Of(herd)}";
    }

    /// <summary>The condition under which an animal on course is Ready: <c>if nothing happens after 20 September</c>.</summary>
    /// <param name="herd">The records.</param>
    /// <param name="said">How the day is said.</param>
    public static string IfNothingHappens(Herd herd, Func<LocalDate, string> said)
    {
        ArgumentNullException.ThrowIfNull(herd);
        ArgumentNullException.ThrowIfNull(said);
        return herd.ReachesADay ? $"if nothing happens after {said(herd.KnownDay)}" : "if nothing ever happened";
    }

    /// <summary>As programs read it: <c>2026-09-20</c>, or nothing.</summary>
    public static string Iso(Herd herd)
    {
        ArgumentNullException.ThrowIfNull(herd);
        return herd.ReachesADay ? LocalDatePattern.Iso.Format(herd.KnownDay) : "";
    }
}
