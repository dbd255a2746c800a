namespace Byrelaw.Language.Diagnostics;

/// <summary>What can be wrong with visits and holiday lists.</summary>
internal static class VisitProblems
{
    public static Diagnostic NoSchedule(SourceSpan at) => Problem.Error(
        "B1225", at, "these visits have no days", "expected `every 14 days from DATE to DATE`, `on DATE`, or `8 days after \"collection\"`");

    public static Diagnostic Backwards(SourceSpan at) => Problem.Error(
        "B1226", at, "the last day is before the first", "the earlier day stands first")
        .OrAny(at.Text.Split(" to ") is [var first, var last] ? [new Proposal(at, $"{last} to {first}")] : []);

    /// <param name="at">The name in its quotes, or what asks for such visits.</param>
    /// <param name="name">Their name.</param>
    /// <param name="near">The name that may be meant; null for none.</param>
    public static Diagnostic UnknownVisits(SourceSpan at, string name, string? near) => NoVisits(
        at, $"there are no visits {Quoted.Of(name)}", "they are declared by a line such as `visits \"collection\" every 14 days from DATE to DATE`", near)
        .OrAny(near is null ? [] : [new Proposal(at, $"\"{near}\"")]);

    public static Diagnostic NoVisitsTo(SourceSpan at, string name, string region, IReadOnlyList<string> regions) => NoVisits(
        at, $"no visits {Quoted.Of(name)} come to the region {Quoted.Of(region)}", $"they come to {Phrases.And([.. regions.Select(Quoted.Of)])}",
        NearestName.To(region, regions));

    public static Diagnostic UnknownDayOff(SourceSpan at, string? near) => Problem.Error(
        "B1228", at, $"{Quoted.Of(at)} is not a day off", "expected a date, a weekday such as `Sundays`, or `holidays`", near is null ? null : $"did you mean {Quoted.Of(near)}?")
        .OrAny(near is null ? [] : [new Proposal(at, near)]);

    public static Diagnostic NoHolidayFile(SourceSpan at) => Problem.Error(
        "B1229", at, $"there is no file {Quoted.Of(at)}", "it is looked for from the folder of this file",
        "a holiday list is a text file: a date and a name on each line");

    public static Diagnostic HolidayLine(SourceSpan at) => Problem.Error(
        "B1230", at, $"{Quoted.Of(at)} is not a holiday", "expected a date and a name, such as `2026-10-26 Labour Day`");

    public static Diagnostic Circle(SourceSpan at, string name) => Problem.Error(
        "B1231", at, $"visits {Quoted.Of(name)} come after themselves", "follow them round: none of them ever starts",
        "give one of them days of its own, such as `on DATE`");

    private static Diagnostic NoVisits(SourceSpan at, string found, string expected, string? near) => Problem.Error(
        "B1227", at, found, expected, near is null ? null : $"did you mean {Quoted.Of(near)}?");
}
