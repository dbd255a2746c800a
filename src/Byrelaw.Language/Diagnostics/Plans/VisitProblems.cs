using Byrelaw.Language.Sources;

namespace Byrelaw.Language.Diagnostics;

/// <summary>What can be wrong with visits and holiday lists.</summary>
internal static class VisitProblems
{
    public static Diagnostic NoSchedule(SourceSpan at) => Problem.Error(
        "B1225", at, "these visits have no days", "expected `every 14 days from DATE to DATE`, `on DATE`, or `8 days after \"collection\"`");

    public static Diagnostic Backwards(SourceSpan at) => Problem.Error(
        "B1226", at, "the last day is before the first", "the earlier day stands first");

    public static Diagnostic UnknownVisits(SourceSpan at, string name) => Problem.Error(
        "B1227", at, $"there are no visits {Quoted.Of(name)}", "they are declared by a line such as `visits \"collection\" every 14 days from DATE to DATE`");

    public static Diagnostic UnknownDayOff(SourceSpan at) => Problem.Error(
        "B1228", at, $"{Quoted.Of(at)} is not a day off", "expected a date, a weekday such as `Sundays`, or `holidays`");

    public static Diagnostic NoHolidayFile(SourceSpan at) => Problem.Error(
        "B1229", at, $"there is no file {Quoted.Of(at)}", "a holiday list is a text file: a date and a name on each line");

    public static Diagnostic HolidayLine(SourceSpan at) => Problem.Error(
        "B1230", at, $"{Quoted.Of(at)} is not a holiday", "expected a date and a name, such as `2026-10-26 Labour Day`");

    public static Diagnostic Circle(SourceSpan at, string name) => Problem.Error(
        "B1231", at, $"visits {Quoted.Of(name)} come after themselves", "follow them round: none of them ever starts");
}
