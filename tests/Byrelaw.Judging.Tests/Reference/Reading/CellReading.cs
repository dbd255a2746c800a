namespace Byrelaw.Judging.Tests.Reference;

/// <summary>What single cells say.</summary>
public static class CellReading
{
    /// <summary>"Dates ISO 8601"; null where it is none.</summary>
    public static int? Day(string cell) =>
        cell.Length == 10 && LocalDatePattern.Iso.Parse(cell) is { Success: true } read ? DayNumber.Of(read.Value) : null;

    /// <summary>"<c>born</c> (a date, a month or a year)": the first and the last day that it may be; nulls where nothing is known.</summary>
    public static (int? First, int? Last) Born(string cell)
    {
        if (Day(cell) is { } day)
        {
            return (day, day);
        }

        if (cell.Length == 7 && Day(cell + "-01") is { } month)
        {
            return (month, DayNumber.Of(DayNumber.Date(month).PlusMonths(1)) - 1);
        }

        if (cell.Length == 4 && Day(cell + "-01-01") is { } year)
        {
            return (year, DayNumber.Of(DayNumber.Date(year).PlusYears(1)) - 1);
        }

        return (null, null);
    }

    /// <summary>A plain number with a decimal point; null where it is none.</summary>
    public static decimal? Number(string cell) =>
        decimal.TryParse(cell, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) ? number : null;

    /// <summary>"A sample whose result is blank or <c>pending</c> ... its result not known."</summary>
    public static bool IsNotKnownYet(string cell) => cell.Length == 0 || NameFolding.Fold(cell) == "pending";

    /// <summary>An amount or a score; null where the cell cannot be read.</summary>
    public static ValueRange? Amount(MeasureKind measure, string value, string unit)
    {
        if (IsNotKnownYet(value))
        {
            return unit.Length == 0 || Factor(measure, unit) is not null ? ValueRange.Any : null;
        }

        var below = value[0] == '<';
        var above = value[0] == '>';
        if (Number(below || above ? value[1..].TrimStart() : value) is not { } written || Factor(measure, unit) is not { } factor)
        {
            return null;
        }

        var number = written * factor;
        decimal? lowest = measure.Scale is { } low ? (decimal)low.From : 0;
        decimal? highest = measure.Scale is { } high ? (decimal)high.To : null;
        if (measure.Scale is not null && (number < lowest || number > highest))
        {
            return null;
        }

        // "<3 on a united measure allows 0 to just below 3 (on a scale from the scale's low end);
        // >10 allows just above 10 to infinity (the scale's high end)."
        return below ? new ValueRange(lowest, number - ValueRange.Hair)
            : above ? new ValueRange(number + ValueRange.Hair, highest)
            : ValueRange.Exactly(number);
    }

    /// <summary>"Values recorded in another unit of the same kind are converted." The reference knows the few units that the
    /// generators write; what one unit is in the declared one, or null where it cannot be that measure's.</summary>
    private static decimal? Factor(MeasureKind measure, string unit) => (measure.Unit?.Symbol, unit) switch
    {
        (null, "") => 1,
        (null, _) => null,
        // "Amounts carry their unit."
        (_, "") => null,
        var (declared, written) when declared == written => 1,
        ("kg", "g") => 0.001m,
        _ => null,
    };
}
