namespace Byrelaw.Language.Rulebooks.Plans;

/// <summary>A day as a statement names it: a date, or so long before or after a date of the programme.</summary>
/// <param name="Date">The date as written; null for one reckoned from another.</param>
/// <param name="Name">The date it is reckoned from; null for a date as written.</param>
/// <param name="Wait">How long between the two; whole days or weeks for <paramref name="IsBefore"/>.</param>
/// <param name="IsBefore">Whether it lies before the named date.</param>
/// <param name="Span">Where.</param>
public sealed record DayReference(LocalDate? Date, string? Name, TimeLength Wait, bool IsBefore, SourceSpan Span)
{
    /// <summary>The day; null where the programme does not set the date it is reckoned from.</summary>
    public LocalDate? In(Programme programme)
    {
        ArgumentNullException.ThrowIfNull(programme);
        return Date ?? (programme.Date(Name!) is { } from ? From(from) : null);
    }

    /// <summary>The day, reckoned from the named date's own day.</summary>
    public LocalDate From(LocalDate named) =>
        !IsBefore ? Wait.After(named) : named.PlusDays(-(Wait.Unit == TimeUnit.Weeks ? 7 : 1) * Wait.Count);
}
