using NodaTime.Text;

namespace Byrelaw.Records.Problems;

/// <summary>What can be wrong with a date.</summary>
internal static class RecordDateProblems
{
    private const string Further = "if the day is right, say that the records reach further: `up to` under `records`";

    private const string Expected = "expected year-month-day, such as `2026-10-19`";

    public static Diagnostic NotADate(RowText row, int cell) => NotADate(row, cell, OfNoDate(row.Cells[cell].Value));

    public static Diagnostic NotADate(RowText row, int cell, (string Found, string Expected, string? Help) said) => row.Problem(cell, "R0121", Severity.Error, said.Found, said.Expected, said.Help);

    /// <summary>What is said of a text that is no date: made once for each text, for there may be a million such rows.</summary>
    public static (string Found, string Expected, string? Help) OfNoDate(string text)
    {
        if (DateCell.TryReadUntil(Encoding.UTF8.GetBytes(text), out var last))
        {
            return ("nobody says on which day this was", Expected, $"write the day; until then she counts as gone from {Iso(last)} on, and before it nobody knows");
        }

        var (found, expected) = DateCell.TryReadSpan(Encoding.UTF8.GetBytes(text), out _, out _) ? ($"`{text}` names no day", Expected)
            : !DateAdvice.IsInOrder(text) ? ($"`{text}` is not a date", Expected)
            : DateAdvice.IsLongAgo(text) ? ($"the year of `{text}` cannot be right", $"expected a year from {CivilDate.FirstYear} on")
            : ($"there is no day `{text}`", Expected);
        return (found, expected, DateAdvice.For(text));
    }

    public static Diagnostic NoDate(RowText row, int cell) => row.Problem(
        cell, "R0122", Severity.Error, "this row has no date", Expected);

    public static Diagnostic AfterKnownDay(RowText row, int cell, int knownDay) => row.Problem(
        cell, "R0123", Severity.Error,
        $"`{row.Cells[cell].Value}` is after {Iso(knownDay)}, the day the records reach", "expected that day or an earlier one",
        Further);

    /// <summary>It is not passed over, as one that was entered later than asked about would be.</summary>
    public static Diagnostic EnteredAfterToday(RowText row, int cell) => row.Problem(
        cell, "R0123", Severity.Error,
        $"`{row.Cells[cell].Value}` is after today, and nothing was entered then", "expected today or an earlier day",
        "correct the day on which it was entered; until then it counts as entered on the day of the row");

    public static Diagnostic BeforeBirth(RowText row, int cell, string animal, int bornFirst, int bornLast) => row.Problem(
        cell, "R0124", Severity.Error,
        $"`{row.Cells[cell].Value}` is before {animal} was born, {(bornFirst == bornLast ? "on" : "at the earliest on")} {Iso(bornFirst)}",
        "expected that day or a later one", "correct this date, her number or her date of birth");

    public static Diagnostic NotABirth(RowText row, int cell) => row.Problem(
        cell, "R0125", Severity.Error,
        $"`{row.Cells[cell].Value}` is not a date of birth",
        "expected a date, a month or a year, such as `2024-08-19`, `2024-08` or `2024`", DateAdvice.For(row.Cells[cell].Value));

    public static Diagnostic NotADayOfParity(RowText row, int cell) => row.Problem(
        cell, "R0127", Severity.Error,
        $"`{row.Cells[cell].Value}` is not the day of a parity", Expected, DateAdvice.For(row.Cells[cell].Value));

    public static Diagnostic ParityAfterKnownDay(RowText row, int cell, int knownDay) => row.Problem(
        cell, "R0127", Severity.Error,
        $"a parity of `{row.Cells[cell].Value}`, which is after {Iso(knownDay)}, the day the records reach", "expected that day or an earlier one",
        Further);

    public static Diagnostic BornAfterKnownDay(RowText row, int cell, int knownDay) => row.Problem(
        cell, "R0126", Severity.Error,
        $"born `{row.Cells[cell].Value}`, which is after {Iso(knownDay)}, the day the records reach",
        "expected that day or an earlier one", Further);

    private static string Iso(int day) => NodaTime.Text.LocalDatePattern.Iso.Format(Day.Date(day));

    public static Diagnostic FarAhead(RowText row, int cell, int knownDay) => row.Problem(
        cell, "R0210", Severity.Error,
        $"`{row.Cells[cell].Value}` lies more than a year after every other day on record", $"expected a day near the others, the last of which is {LocalDatePattern.Iso.Format(Day.Date(knownDay))}",
        "correct the date; if it is right, say how far the records reach: `up to` under `records`");

    public static Diagnostic BornLongAgo(RowText row, int cell, int years) => row.Problem(
        cell, "R0214", Severity.Error,
        $"born `{row.Cells[cell].Value}`, more than {years} years ago", "expected the birth of an animal that may be in the herd",
        "correct the year; until then her birth is not known");
}
