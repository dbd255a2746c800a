using System.Text.RegularExpressions;

namespace Byrelaw.Language.Lexing;

/// <summary>Reads days. Only year-month-day is taken; other orders are recognised to say what was meant.</summary>
internal static partial class DateScanner
{
    private const string Months = "jan(?:uary)?|feb(?:ruary)?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?|sept?(?:ember)?|oct(?:ober)?|nov(?:ember)?|dec(?:ember)?";
    private const RegexOptions Options = RegexOptions.IgnoreCase | RegexOptions.CultureInvariant;

    /// <summary>A date in digits; null where the digits are no date in any order.</summary>
    public static Token? FromDigits(SourceSpan span)
    {
        var match = Digits().Match(span.Text);
        if (!match.Success)
        {
            return null;
        }

        var (a, b, c) = (match.Groups[1].Value, match.Groups[3].Value, match.Groups[4].Value);
        if (a.Length == 4)
        {
            var isIso = match.Groups[2].Value == "-" && b.Length == 2 && c.Length == 2;
            return Day(a, b, c) is not { } day ? Bad(span, DateProblems.NoSuchDay(span, Number(a), Number(b)))
                : isIso ? new Token(TokenKind.Date, span) { Text = span.Text, Date = day }
                : Bad(span, DateProblems.OtherOrder(span, day));
        }

        var year = c.Length == 2 ? "20" + c : c;
        return (Day(year, b, a), Day(year, a, b)) switch
        {
            ({ } one, { } other) when one != other => Bad(span, DateProblems.EitherOrder(span, one, other)),
            ({ } dayFirst, _) => Bad(span, DateProblems.OtherOrder(span, dayFirst)),
            (_, { } monthFirst) => Bad(span, DateProblems.OtherOrder(span, monthFirst)),
            _ => null,
        };
    }

    /// <summary>A date such as <c>19 October 2026</c>; null where none starts here.</summary>
    public static Token? DayFirst(SourceFile file, int start)
    {
        var match = DayMonthYear().Match(file.Text, start);
        return match.Success ? InWords(file, match, match.Groups[1].Value, match.Groups[2].Value) : null;
    }

    /// <summary>A date such as <c>October 19, 2026</c>; null where none starts here.</summary>
    public static Token? MonthFirst(SourceFile file, int start)
    {
        if (!"jfmasondJFMASOND".Contains(file.Text[start], StringComparison.Ordinal))
        {
            return null;
        }

        var match = MonthDayYear().Match(file.Text, start);
        return match.Success ? InWords(file, match, match.Groups[2].Value, match.Groups[1].Value) : null;
    }

    private static Token? InWords(SourceFile file, Match match, string day, string month)
    {
        var span = new SourceSpan(file, match.Index, match.Length);
        var number = Array.FindIndex(
            CultureInfo.InvariantCulture.DateTimeFormat.AbbreviatedMonthNames,
            name => name.Length > 0 && month.StartsWith(name, StringComparison.OrdinalIgnoreCase)) + 1;
        var year = match.Groups[3].Value;
        return Day(year, number.ToString(CultureInfo.InvariantCulture), day) is { } meant
            ? Bad(span, DateProblems.OtherOrder(span, meant))
            : Bad(span, DateProblems.NoSuchDay(span, Number(year), number));
    }

    private static LocalDate? Day(string year, string month, string day)
    {
        var (y, m, d) = (Number(year), Number(month), Number(day));
        return y is >= 1900 and <= 9000 && m is >= 1 and <= 12 && d >= 1 && d <= CalendarSystem.Iso.GetDaysInMonth(y, m)
            ? new LocalDate(y, m, d)
            : null;
    }

    private static int Number(string digits) => int.Parse(digits, CultureInfo.InvariantCulture);

    private static Token Bad(SourceSpan span, Diagnostic problem) => new(TokenKind.Bad, span) { Problem = problem };

    [GeneratedRegex(@"^([0-9]{1,4})([-/.])([0-9]{1,2})\2([0-9]{1,4})$", Options)]
    private static partial Regex Digits();

    [GeneratedRegex(@"\G([0-9]{1,2})(?:st|nd|rd|th)?[ \t]+(" + Months + @")\.?,?[ \t]+([0-9]{4})(?![0-9])", Options)]
    private static partial Regex DayMonthYear();

    [GeneratedRegex(@"\G(" + Months + @")\.?[ \t]+([0-9]{1,2})(?:st|nd|rd|th)?,?[ \t]+([0-9]{4})(?![0-9])", Options)]
    private static partial Regex MonthDayYear();
}
