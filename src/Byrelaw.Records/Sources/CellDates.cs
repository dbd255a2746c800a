namespace Byrelaw.Records.Sources;

/// <summary>Dates as a source writes them, turned into the landed form. What does not fit is never turned round.</summary>
/// <param name="order">In which order the parts stand.</param>
/// <param name="hasShortYears">Whether years are written with two digits.</param>
/// <param name="today">The day after which no short year lies; null where nobody says.</param>
internal sealed class CellDates(DateOrder order, bool hasShortYears, LocalDate? today)
{
    private const string Signs = "/.-";

    /// <summary>The date as <c>2026-09-20</c>; null where the cell is none in this order.</summary>
    public string? Landed(string cell)
    {
        var text = WithoutTime(cell);
        if (order == DateOrder.YearFirst)
        {
            return DateCell.TryRead(Encoding.UTF8.GetBytes(text), out _) ? text : null;
        }

        var at = text.IndexOfAny(['/', '.', '-']);
        if (at < 0 || !Signs.Contains(text[at], StringComparison.Ordinal) || text.Split(text[at]) is not [var first, var second, var years])
        {
            return null;
        }

        var (days, months) = order == DateOrder.DayFirst ? (first, second) : (second, first);
        return Number(days, 2) is { } day && Number(months, 2) is { } month && Year(years) is { } year && CivilDate.Exists(year, month, day)
            ? string.Create(CultureInfo.InvariantCulture, $"{year:0000}-{month:00}-{day:00}")
            : null;
    }

    /// <summary>A birth: a date, or a month or a year in the landed form.</summary>
    public string? LandedBirth(string cell) =>
        cell.Length is 4 or 7 && DateCell.TryReadSpan(Encoding.UTF8.GetBytes(cell), out _, out _) ? cell : Landed(cell);

    private int? Year(string text)
    {
        if (text.Length == 4)
        {
            return Number(text, 4);
        }

        if (!hasShortYears || text.Length != 2 || Number(text, 2) is not { } years)
        {
            return null;
        }

        // The latest such year that is not to come.
        var now = today?.Year ?? CivilDate.FirstYear + 199;
        var year = (now / 100 * 100) + years;
        return year > now ? year - 100 : year;
    }

    private static int? Number(string text, int most) =>
        text.Length is > 0 && text.Length <= most && int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;

    /// <summary>A time behind a date says nothing that anybody judges by.</summary>
    private static string WithoutTime(string cell)
    {
        var space = cell.IndexOfAny([' ', 'T']);
        return space > 0 && TimeOnly.TryParse(cell.AsSpan(space + 1), CultureInfo.InvariantCulture, out _) ? cell[..space] : cell;
    }
}
