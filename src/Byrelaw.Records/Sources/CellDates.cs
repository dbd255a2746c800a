namespace Byrelaw.Records.Sources;

/// <summary>Dates as a source writes them, turned into the landed form. What does not fit is never turned round.</summary>
/// <param name="order">In which order the parts stand.</param>
/// <param name="hasShortYears">Whether years are written with two digits.</param>
/// <param name="today">The day after which no short year lies; null where nobody says.</param>
internal sealed class CellDates(DateOrder order, bool hasShortYears, LocalDate? today)
{
    private const string Signs = "/.-";

    // A few thousand days stand in all of a herd's rows.
    private const int MostSeen = 1 << 14;

    private readonly Dictionary<string, string?> _seen = new(StringComparer.Ordinal);

    /// <summary>The date as <c>2026-09-20</c>; null where the cell is none in this order.</summary>
    public string? Landed(string cell)
    {
        var text = WithoutTime(cell);
        if (order == DateOrder.YearFirst)
        {
            return DateCell.TryRead(Encoding.UTF8.GetBytes(text), out _) ? text : null;
        }

        if (Named(cell) is [var a, var b, var c])
        {
            // The month says by its name where it stands, and must stand where the order has it.
            var (namedDay, name) = order == DateOrder.DayFirst ? (a, b) : (b, a);
            return MonthNames.Number(name) is { } named && Number(namedDay, 2) is { } ofMonth && Year(c) is { } ofYear && CivilDate.Exists(ofYear, named, ofMonth)
                ? string.Create(CultureInfo.InvariantCulture, $"{ofYear:0000}-{named:00}-{ofMonth:00}") : null;
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

    /// <summary>Whether a text is a date in the landed form.</summary>
    public static bool IsLanded(string cell) => DateCell.TryRead(Encoding.UTF8.GetBytes(WithoutTime(cell)), out _);

    /// <summary>A date, or a month or a year of which the day is not known: <c>2026-08</c>, <c>08/2026</c> where the year stands last, <c>2026</c>.</summary>
    public string? LandedSpan(string cell)
    {
        if (!_seen.TryGetValue(cell, out var landed))
        {
            landed = Span(cell);
            if (_seen.Count < MostSeen)
            {
                _seen.Add(cell, landed);
            }
        }

        return landed;
    }

    private string? Span(string cell)
    {
        if (cell.Length is 4 or 7 && DateCell.TryReadSpan(Encoding.UTF8.GetBytes(cell), out _, out _))
        {
            return cell;
        }

        if (order != DateOrder.YearFirst && Named(cell) is [var name, { Length: 4 } inYear] && MonthNames.Number(name) is { } monthOfYear && Number(inYear, 4) is { } its && CivilDate.Exists(its, monthOfYear, 1))
        {
            return string.Create(CultureInfo.InvariantCulture, $"{its:0000}-{monthOfYear:00}");
        }

        return order != DateOrder.YearFirst && cell.Split(cell.FirstOrDefault(sign => Signs.Contains(sign, StringComparison.Ordinal))) is [var months, { Length: 4 } years]
            && Number(months, 2) is { } month && Number(years, 4) is { } year && CivilDate.Exists(year, month, 1)
            ? string.Create(CultureInfo.InvariantCulture, $"{year:0000}-{month:00}")
            : Landed(cell);
    }

    /// <summary>The parts of a date in which a month stands by its name; null for every other text.</summary>
    private static string[]? Named(string cell)
    {
        if (!cell.Any(char.IsAsciiLetter))
        {
            return null;
        }

        string[] parts = [.. cell.Split([' ', '/', '.', '-', ','], StringSplitOptions.RemoveEmptyEntries).TakeWhile(part => !part.Contains(':', StringComparison.Ordinal))];
        return parts.Count(part => MonthNames.Number(part) is not null) == 1 ? parts : null;
    }

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
