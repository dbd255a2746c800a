namespace Byrelaw.Language.Diagnostics;

/// <summary>What can be wrong with dates.</summary>
internal static class DateProblems
{
    public static Diagnostic OtherOrder(SourceSpan at, LocalDate meant) => Problem.Error(
        "B0121", at, $"the date {Quoted.Of(at)} is written another way", "dates are written year-month-day", $"write `{Iso(meant)}`")
        .Or(new Proposal(at, Iso(meant)));

    public static Diagnostic EitherOrder(SourceSpan at, LocalDate one, LocalDate other) => Problem.Error(
        "B0122", at, $"the date {Quoted.Of(at)} can be read two ways", "dates are written year-month-day",
        $"is it {Spoken(one)}, `{Iso(one)}`, or {Spoken(other)}, `{Iso(other)}`?");

    public static Diagnostic NoSuchDay(SourceSpan at, int year, int month) => DaySwapped(Problem.Error(
        "B0123", at, $"there is no day {Quoted.Of(at)}",
        month is < 1 or > 12 ? "months go from 01 to 12"
        : year is < 1900 or > 9000 ? "years go from 1900 to 9000"
        : $"{CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(month)} {year} has {CalendarSystem.Iso.GetDaysInMonth(year, month)} days"), at);

    /// <summary>With day and month the other way round, where that is a day.</summary>
    private static Diagnostic DaySwapped(Diagnostic problem, SourceSpan at) =>
        at.Text is [_, _, _, _, '-', var m1, var m2, '-', var d1, var d2] && LocalDatePattern.Iso.Parse($"{at.Text[..4]}-{d1}{d2}-{m1}{m2}") is { Success: true, Value: var meant }
            ? (problem with { Help = $"did you mean {Spoken(meant)}, `{Iso(meant)}`?" }).Or(new Proposal(at, Iso(meant)))
            : problem;

    private static string Iso(LocalDate date) => date.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture);

    private static string Spoken(LocalDate date) => date.ToString("d MMMM", CultureInfo.InvariantCulture);
}
