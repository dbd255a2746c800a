using System.Text.RegularExpressions;

namespace Byrelaw.Workshop.Carrying;

/// <summary>The season that a programme is carried to: <c>2027</c>, or <c>spring 2027</c>.</summary>
/// <param name="Name">As written.</param>
/// <param name="Year">The year in it.</param>
public sealed partial record NextSeason(string Name, int Year)
{
    /// <summary>Reads a season; null where it does not end in a year.</summary>
    public static NextSeason? Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var name = text.Trim();
        return YearAtEnd().Match(name) is { Success: true } match && !name.Contains('"', StringComparison.Ordinal)
            ? new NextSeason(name, int.Parse(match.Value, CultureInfo.InvariantCulture))
            : null;
    }

    /// <summary>The programme's name in this season: its own with the season in it put in the old one's place, or at the end.</summary>
    public string Rename(string programme)
    {
        ArgumentNullException.ThrowIfNull(programme);
        // Only what stands by itself is a season: "Withy Bend 2026" must not lose half of the farm's name.
        var old = Name.Contains(' ', StringComparison.Ordinal) && WordAndYear().Matches(programme) is { Count: > 0 } seasons ? seasons : AnyYear().Matches(programme);
        return old.Count == 0 ? $"{programme}, {Name}" : programme.Remove(old[^1].Index, old[^1].Length).Insert(old[^1].Index, Name);
    }

    /// <summary>The year in a programme's name; null where there is none.</summary>
    public static int? YearIn(string programme) =>
        AnyYear().Matches(programme) is { Count: > 0 } years ? int.Parse(years[^1].Value, CultureInfo.InvariantCulture) : null;

    /// <summary>Whole weeks from a day to about the same day so many years later: weekdays stay, and so do the waits between dates.</summary>
    public static int DaysTo(LocalDate first, int years)
    {
        var days = Period.DaysBetween(first, first.PlusYears(years));
        return 7 * (int)Math.Round(days / 7.0);
    }

    [GeneratedRegex(@"\b(?:19|20)[0-9][0-9]$")]
    private static partial Regex YearAtEnd();

    [GeneratedRegex(@"\b(?:19|20)[0-9][0-9]\b")]
    private static partial Regex AnyYear();

    [GeneratedRegex(@"(?<=^|, )\p{L}+ (?:19|20)[0-9][0-9]\b")]
    private static partial Regex WordAndYear();
}
