using System.Text.RegularExpressions;

namespace Byrelaw.Records.Cells;

/// <summary>Guesses what date a person meant, to say how to write it. The guess is only ever shown, never used.</summary>
internal static partial class DateAdvice
{
    /// <summary>How to mend the cell; null where nothing better can be said.</summary>
    public static string? For(string text)
    {
        if (Numbers().Match(WithPlainDigits(text)) is not { Success: true } match)
        {
            return null;
        }

        int Part(string name) => int.Parse(match.Groups[name].ValueSpan, CultureInfo.InvariantCulture);
        var (year, one, other) = (Part("y"), Part("a"), Part("b"));
        string?[] meant = match.Groups["first"].Success
            ? [Iso(year, one, other)]
            : [Iso(year, other, one), Iso(year, one, other)];
        return meant.Where(date => date is not null).Distinct().ToArray() switch
        {
            [var only] => $"write `{only}`",
            [var dayFirst, var monthFirst] => $"write `{dayFirst}` or `{monthFirst}`, whichever is meant",
            _ => null,
        };
    }

    /// <summary>Whether it is written as dates are, so that only the day itself is wrong.</summary>
    public static bool IsInOrder(string text) => InOrder().IsMatch(text);

    /// <summary>Whether a date that is in order lies before all living animals.</summary>
    public static bool IsLongAgo(string text) => int.Parse(text.AsSpan(0, 4), CultureInfo.InvariantCulture) < CivilDate.FirstYear;

    /// <summary>Digits of other scripts, and wide ones, as 0 to 9.</summary>
    private static string WithPlainDigits(string text) =>
        string.Concat(text.Select(c => char.IsDigit(c) ? (char)('0' + (int)char.GetNumericValue(c)) : c));

    private static string? Iso(int year, int month, int day) =>
        CivilDate.Exists(year, month, day) ? string.Create(CultureInfo.InvariantCulture, $"{year:0000}-{month:00}-{day:00}") : null;

    [GeneratedRegex("^[0-9]{4}-[0-9]{2}-[0-9]{2}$", RegexOptions.CultureInvariant)]
    private static partial Regex InOrder();

    [GeneratedRegex(@"^(?:(?<first>)(?<y>[0-9]{4})(?<sep>[-/. ]?)(?<a>[0-9]{1,2})\k<sep>(?<b>[0-9]{1,2})|(?<a>[0-9]{1,2})(?<sep>[-/. ])(?<b>[0-9]{1,2})\k<sep>(?<y>[0-9]{4}))(?:[T ]00:00(?::00)?)?$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Numbers();
}
