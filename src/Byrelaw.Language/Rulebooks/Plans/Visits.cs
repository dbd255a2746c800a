namespace Byrelaw.Language.Rulebooks.Plans;

/// <summary>On which days a team comes to a region.</summary>
/// <param name="Name">What it comes for, such as <c>collection</c>.</param>
/// <param name="Region">Where; null for everywhere.</param>
/// <param name="Schedules">When, added together.</param>
/// <param name="DaysOff">When not.</param>
/// <param name="Span">Where it is written.</param>
public sealed record Visits(string Name, string? Region, ImmutableArray<VisitSchedule> Schedules, DaysOff DaysOff, SourceSpan Span);

/// <summary>One line that says when a team comes.</summary>
public abstract record VisitSchedule;

/// <summary><c>every 14 days from 2026-07-06 to 2026-12-18</c>.</summary>
public sealed record EveryVisit(TimeLength Every, LocalDate From, LocalDate To) : VisitSchedule;

/// <summary><c>on 2026-10-12, 2026-10-26</c>.</summary>
public sealed record VisitDates(ImmutableArray<LocalDate> Dates) : VisitSchedule;

/// <summary><c>8 days after "collection"</c>.</summary>
public sealed record AfterVisits(TimeLength Wait, string Name) : VisitSchedule;

/// <summary>Days on which a team does not come.</summary>
/// <param name="Dates">Single days.</param>
/// <param name="Weekdays">Every such day.</param>
/// <param name="Holidays">Every public holiday of the programme's list.</param>
public sealed record DaysOff(ImmutableArray<LocalDate> Dates, ImmutableArray<IsoDayOfWeek> Weekdays, bool Holidays);

/// <summary>A public holiday, from the programme's list of them.</summary>
public sealed record Holiday(LocalDate Date, string Name);
