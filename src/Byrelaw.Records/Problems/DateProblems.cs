using Byrelaw.Language.Diagnostics;
using Byrelaw.Records.Cells;
using Byrelaw.Records.Csv;
using Byrelaw.Records.Herds;

namespace Byrelaw.Records.Problems;

/// <summary>What can be wrong with a date.</summary>
internal static class DateProblems
{
    private const string Expected = "expected year-month-day, such as `2026-10-19`";

    public static Diagnostic NotADate(RowText row, int cell) => row.Problem(
        cell, "R0121", Severity.Error,
        DateAdvice.IsInOrder(row.Cells[cell].Value) ? $"there is no day `{row.Cells[cell].Value}`" : $"`{row.Cells[cell].Value}` is not a date", Expected, DateAdvice.For(row.Cells[cell].Value));

    public static Diagnostic NoDate(RowText row, int cell) => row.Problem(
        cell, "R0122", Severity.Error, "no date", Expected);

    public static Diagnostic AfterKnownDay(RowText row, int cell, int knownDay) => row.Problem(
        cell, "R0123", Severity.Error,
        $"`{row.Cells[cell].Value}` is after {Iso(knownDay)}, the day the records reach", "expected that day or an earlier one",
        "if the records reach further, say so: `up to` under `records`");

    public static Diagnostic BeforeBirth(RowText row, int cell, string animal, int born) => row.Problem(
        cell, "R0124", Severity.Error,
        $"`{row.Cells[cell].Value}` is before {animal} was born on {Iso(born)}", "expected that day or a later one");

    public static Diagnostic NotABirth(RowText row, int cell) => row.Problem(
        cell, "R0125", Severity.Error,
        $"`{row.Cells[cell].Value}` is not a date of birth",
        "expected a date, a month or a year, such as `2024-08-19`, `2024-08` or `2024`", DateAdvice.For(row.Cells[cell].Value));

    public static Diagnostic BornAfterKnownDay(RowText row, int cell, int knownDay) => row.Problem(
        cell, "R0126", Severity.Error,
        $"born `{row.Cells[cell].Value}`, which is after {Iso(knownDay)}, the day the records reach",
        "expected that day or an earlier one");

    private static string Iso(int day) => NodaTime.Text.LocalDatePattern.Iso.Format(Day.Date(day));
}
