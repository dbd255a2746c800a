namespace Byrelaw.Judging.Tests.Promises;

/// <summary>
/// Falls silent, held to its letter, day by day: "the longest run of days up to the reach, more than 14, that holds at most one entry day for
/// every ten that the poorest of the compared years had in the same days", where each of those years held three or more, and no pause half
/// as long.
/// </summary>
public sealed class SilenceTests
{
    private static readonly LocalDate Reach = new(2026, 10, 4);
    private static readonly LocalDate Since = new(2020, 1, 1);

    [Fact]
    public void A_silence_is_found_as_its_letter_says() => Each.Hold(
        Services, Cases.Count / 10,
        days => Found(days) is var found && Literal(days) is var letter && found == letter ? null : $"found {found}, and by the letter {letter}",
        days => string.Join(' ', days.Select(day => LocalDatePattern.Iso.Format(day))));

    [Fact]
    public void One_stray_row_ends_no_silence_and_one_in_five_does()
    {
        // Every third day from May to September of four years: 20 days in any 60.
        LocalDate[] kept = [.. Season(2022, 3), .. Season(2023, 3), .. Season(2024, 3), .. Season(2025, 3), .. Season(2026, 3).Where(day => day < new LocalDate(2026, 7, 1))];
        LocalDate stray = new(2026, 9, 28);
        // 33 such days lie in the same weeks of each year before, so 3 may stand in the longest silence: it begins before the last of those kept.
        Found([.. kept, stray]).ShouldBe((new(2026, 6, 25), 3));
        Found([.. kept, new(2026, 8, 3), stray]).ShouldBe((new(2026, 6, 28), 3));
        Found([.. kept, new(2026, 8, 3), new(2026, 8, 20), new(2026, 9, 9), stray]).ShouldBeNull();
    }

    private static IEnumerable<LocalDate> Season(int year, int every) =>
        Enumerable.Range(0, 150).Where(i => i % every == 0).Select(i => new LocalDate(year, 5, 4).PlusDays(i));

    /// <summary>Some years of services, thinner or denser; from some day on hardly any.</summary>
    private static Gen<LocalDate[]> Services =>
        from years in Gen.Int[2022, 2024]
        from every in Gen.Int[1, 9]
        from thin in Gen.Int[0, 3]
        from stop in Gen.Int[10, 150]
        from strays in Gen.Int[0, 149].Array[0, 4]
        from lost in Gen.Int[0, 3].Array[4 * 150]
        let all = Enumerable.Range(years, 2026 - years + 1).SelectMany(year => Season(year, every).Select((day, i) => (Day: day, Keep: lost[((year - years) * 100 % 500) + i] >= thin)))
            .Where(one => one.Keep && (one.Day.Year < 2026 || one.Day < new LocalDate(2026, 5, 4).PlusDays(stop))).Select(one => one.Day)
        select all.Concat(strays.Select(i => new LocalDate(2026, 5, 4).PlusDays(i))).Append(new LocalDate(years, 2, 1)).Distinct().Order().ToArray();

    private static (LocalDate From, int Strays)? Found(LocalDate[] days)
    {
        var herd = new PromisingFarm
        {
            Animals = ["1,2015-01-01,F"],
            Events = days.Select(day => $"{LocalDatePattern.Iso.Format(day)},1,mating,"),
            Records = $"up to {LocalDatePattern.Iso.Format(Reach)}\ncomplete for mating since {LocalDatePattern.Iso.Format(Since)}",
        }.Believe();
        return herd.Doubted.OfType<FallenSilent>().SingleOrDefault() is { } silent ? (Day.Date(silent.From), silent.Strays) : null;
    }

    private static (LocalDate From, int Strays)? Literal(LocalDate[] entries)
    {
        for (var from = Since; from <= Reach; from = from.PlusDays(1))
        {
            if ((from == Since || entries.Contains(from.PlusDays(-1))) && IsSilent(entries, from, out var strays))
            {
                return (from, strays);
            }
        }

        return null;
    }

    private static bool IsSilent(LocalDate[] entries, LocalDate from, out int strays)
    {
        var length = Period.DaysBetween(from, Reach) + 1;
        strays = entries.Count(day => day >= from);
        int[] held = [.. Years(entries, from).Select(year => year.Count)];
        return length > 14 && held.Length > 0 && held.Min() >= 3 && strays <= held.Min() / 10
            && Years(entries, from).All(year => year.LongestPause * 2 < length);
    }

    /// <summary>Of the same days one, two and three years earlier, those that begin after the first entry.</summary>
    private static IEnumerable<(int Count, int LongestPause)> Years(LocalDate[] entries, LocalDate from)
    {
        for (var years = 1; years <= 3; years++)
        {
            var (first, last) = (from.PlusYears(-years), Reach.PlusYears(-years));
            if (first <= entries[0])
            {
                yield break;
            }

            var (count, pause, longest) = (0, 0, 0);
            for (var day = first; day <= last; day = day.PlusDays(1))
            {
                var isEntry = Array.BinarySearch(entries, day) >= 0;
                count += isEntry ? 1 : 0;
                pause = isEntry ? 0 : pause + 1;
                longest = Math.Max(longest, pause);
            }

            yield return (count, longest);
        }
    }
}
