namespace Byrelaw.Reporting.Calendar;

/// <summary>One entry of a calendar file, over whole days.</summary>
/// <param name="Id">Stays the same when the days move; unique in the file.</param>
/// <param name="From">First day.</param>
/// <param name="To">Last day, included.</param>
/// <param name="Title">What stands in the calendar.</param>
/// <param name="Text">What one reads on opening it; empty for nothing.</param>
public sealed record CalendarEvent(string Id, LocalDate From, LocalDate To, string Title, string Text);
