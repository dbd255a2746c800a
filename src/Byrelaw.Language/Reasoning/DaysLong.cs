namespace Byrelaw.Language.Reasoning;

/// <summary>
/// A length of time and some days more, such as "a day longer than 13 months". How many days that is depends on
/// where the months fall: between <see cref="Fewest"/> and <see cref="Most"/>.
/// </summary>
/// <param name="Months">Calendar months; 0 where the length is written in days or weeks.</param>
/// <param name="Days">Days on top of them; may be below 0.</param>
internal readonly record struct DaysLong(int Months, int Days)
{
    private static readonly LocalDate FirstDay = new(2095, 1, 1);
    private const int DaysTried = 9 * 366;
    private static readonly Dictionary<int, (int Fewest, int Most)> Known = [];

    /// <summary>The length as written.</summary>
    public static DaysLong Of(TimeLength length) => length.Unit switch
    {
        TimeUnit.Days => new DaysLong(0, length.Count),
        TimeUnit.Weeks => new DaysLong(0, 7 * length.Count),
        TimeUnit.Months => new DaysLong(length.Count, 0),
        _ => new DaysLong(12 * length.Count, 0),
    };

    /// <summary>The fewest days that it may be.</summary>
    public int Fewest => Days + Span(Months).Fewest;

    /// <summary>The most days that it may be.</summary>
    public int Most => Days + Span(Months).Most;

    /// <summary>The same length and some days more.</summary>
    public DaysLong Plus(int days) => this with { Days = Days + days };

    /// <summary>Fewest and most days of so many months, over nine years around one that is no leap year but might have been:
    /// every way in which months can fall.</summary>
    private static (int Fewest, int Most) Span(int months)
    {
        if (months == 0)
        {
            return (0, 0);
        }

        lock (Known)
        {
            if (!Known.TryGetValue(months, out var span))
            {
                Known[months] = span = Tried(months);
            }

            return span;
        }
    }

    private static (int Fewest, int Most) Tried(int months)
    {
        var length = new TimeLength(months, TimeUnit.Months);
        var (fewest, most) = (int.MaxValue, 0);
        for (var from = FirstDay; from < FirstDay.PlusDays(DaysTried); from = NextThatDiffers(from))
        {
            var days = Period.DaysBetween(from, length.After(from));
            (fewest, most) = (Math.Min(fewest, days), Math.Max(most, days));
        }

        return (fewest, most);
    }

    /// <summary>From any of the first 28 days of a month the same day of a later one is as many days away, for every month has 28.</summary>
    private static LocalDate NextThatDiffers(LocalDate day) => day.PlusDays(day.Day == 1 ? 28 : 1);
}
