using System.Text.RegularExpressions;
using Byrelaw.Workshop.Carrying;
using NodaTime.Text;

namespace Byrelaw.Workshop.Tests.Carrying;

public sealed partial class CarryTests
{
    private static readonly NextSeason Next = NextSeason.Read("spring 2027")!;

    [Fact]
    public void A_programme_is_carried_on_with_its_comments() => Snapshot.Verify(Carry(
        """
        # Withy Bend
        use "recipients.byre"

        records "records"
          up to 2026-10-04       # the morning of the first inserts
          complete for calving, heat since 2024-06-01

        programme "Withy Bend, spring 2026"
          date first treatment on 2026-10-04
          collection on 2026-10-12  # a Monday
          transfer 8 days after collection, over 2 days
          choose recipients from females, judged from first transfer to final transfer

        # What we do differently here

        change "Young enough"
          needs parity at most 5
          because "The hill is steep."
          agreed by "farmer", "herd vet" on 2026-06-14

        # She was out when River was sampled.
        waive "Copper of the mob" for "1031"
          until 2026-10-31
          because "Bolus given on 2 September."
          agreed by "herd vet" on 2026-09-20

        rule "No old scores"
          needs no lameness since 2026-06-01
          because "."

        """).Text);

    [Fact]
    public void What_was_agreed_again_and_carried_on_has_one_mark()
    {
        const string Mark = "# To be agreed again for spring 2028\n";
        var once = Carry("programme \"Spring 2026\"\n  collection on 2026-10-12\n\ndrop \"Weighed\"\n  because \".\"\n  agreed by \"vet\" on 2026-06-14\n").Text;
        var twice = FileCarrier.Carry("a.byre", Encoding.UTF8.GetBytes(once), NextSeason.Read("spring 2028")!)!.Text;
        twice.ShouldContain(Mark);
        twice.ShouldNotContain("spring 2027");
    }

    [Fact]
    public void Visits_and_due_days_move_and_holidays_and_the_tank_are_to_be_looked_at()
    {
        var carried = Carry(
            """
            programme "Bend, spring 2026"
              collection on a visit between 2026-10-01 and 2026-11-30
              tank holds 6 frozen embryos
              holiday 2026-10-26 "Labour Day"
            visits "collection" every 14 days from 2026-07-06 to 2026-12-18
              not on 2026-08-03
            task "Sign"
              due on 2026-09-01
            assume oocytes per collection 9, spread 6
              because "Counted since 2026-01-01."

            """);
        carried.Text.ShouldBe(
            """
            programme "Bend, spring 2027"
              collection on a visit between 2027-09-30 and 2027-11-29
              tank holds 6 frozen embryos
              holiday 2026-10-26 "Labour Day"
            visits "collection" every 14 days from 2027-07-05 to 2027-12-17
              not on 2027-08-02
            task "Sign"
              due on 2027-08-31
            assume oocytes per collection 9, spread 6
              because "Counted since 2026-01-01."

            """);
        carried.Notes.Where(note => note.Kind == CarryKind.LookAt).Select(note => note.Line).ShouldBe([3, 4]);
    }

    // Weekdays: common calendar, checked by the library's own day of the week.
    [Theory]
    [InlineData("2026-10-12", 364)]
    [InlineData("2027-10-12", 364)]
    [InlineData("2024-02-29", 364)]
    public void A_year_on_is_whole_weeks_on(string first, int days)
    {
        var date = LocalDatePattern.Iso.Parse(first).Value;
        NextSeason.DaysTo(date, 1).ShouldBe(days);
        date.PlusDays(days).DayOfWeek.ShouldBe(date.DayOfWeek);
    }

    [Theory]
    [InlineData("Withy Bend, spring 2026", "spring 2027", "Withy Bend, spring 2027")]
    [InlineData("Withy Bend, spring 2026", "2027", "Withy Bend, spring 2027")]
    [InlineData("Withy Bend 2026", "autumn 2027", "Withy Bend autumn 2027")]
    [InlineData("Withy Bend", "spring 2027", "Withy Bend, spring 2027")]
    public void A_programme_is_named_after_its_new_season(string old, string season, string name) => NextSeason.Read(season)!.Rename(old).ShouldBe(name);

    [Theory]
    [InlineData("spring")]
    [InlineData("2027 spring")]
    [InlineData("spring 20\"27")]
    [InlineData("")]
    [InlineData("spring 20２７")]
    public void A_season_ends_in_its_year(string text) => NextSeason.Read(text).ShouldBeNull();

    [Fact]
    public void A_season_that_is_over_is_not_carried_to() =>
        FileCarrier.Carry("a.byre", "programme \"Spring 2026\"\n  collection on 2026-10-12\n"u8.ToArray(), NextSeason.Read("spring 2026")!).ShouldBeNull();

    [Fact]
    public void The_first_date_may_be_said()
    {
        var autumn = FileCarrier.Carry(
            "a.byre", "programme \"Spring 2026\"\n  collection on 2026-10-12\n"u8.ToArray(), NextSeason.Read("autumn 2027")!, new LocalDate(2027, 3, 30))!;
        autumn.Text.ShouldBe("programme \"autumn 2027\"\n  collection on 2027-03-29\n");
    }

    private static readonly Gen<string> Part = Gen.OneOf<string>(
        "# a remark of ours",
        "",
        "records \"records\"\n  up to 2026-10-04\n  complete for calving since 2024-06-01",
        "change \"Young enough\"\n  # why: the hill\n  needs parity at most 5\n  because \"Steep.\"\n  agreed by \"vet\" on 2026-06-14",
        "drop \"Weighed\"   # no scales\n  because \"No\"\n  \"scales.\"\n  agreed by \"vet\" on 2026-06-14",
        "waive \"Copper\" for \"1423\"\n  until 2026-10-31\n  because \"Retest\n booked.\"\n  agreed by \"vet\" on 2026-09-20",
        "waive \"Copper\" for \"1424\"\n  until 2026-10-31\n  because \"Retest booked.\"\n  agreed by \"vet\" on 2026-09-20\n# of hers",
        "define quiet\n  no heat since 2026-06-01",
        "event heat  # 2026-01-01 is no date here");

    private static readonly Gen<string> Files =
        from before in Part.Array[0, 4]
        from after in Part.Array[0, 4]
        from end in Gen.OneOf<string>("\n", "\r\n")
        select string.Join("\n", [.. before, "programme \"Bend, spring 2026\"\n  collection on 2026-10-12\n  transfer on 2026-10-20", .. after, ""])
            .Replace("\n", end, StringComparison.Ordinal);

    [Fact]
    public void Dates_marks_and_what_is_listed_as_left_out_change_and_nothing_else() => Files.Hold(
        text =>
        {
            var carried = Carry(text);
            var gone = carried.Notes.Where(note => note.Kind == CarryKind.Dropped).SelectMany(note => Enumerable.Range(note.Line, note.Lines)).ToHashSet();
            var moved = carried.Notes.Where(note => note.Kind == CarryKind.Moved).SelectMany(note => Enumerable.Range(note.Line, note.Lines)).ToHashSet();
            var left = text.Split('\n').Select((line, i) => (Line: i + 1, Text: line)).Where(line => !gone.Contains(line.Line))
                .Select(line => moved.Contains(line.Line) ? OnDates(line.Text, carried.Days) : line.Text.Replace("spring 2026", "spring 2027", StringComparison.Ordinal));
            var fresh = carried.Text.Split('\n').Where(line => !line.TrimStart().StartsWith(FileCarrier.Mark, StringComparison.Ordinal));
            return left.SequenceEqual(fresh);
        },
        count: 500);

    private static string OnDates(string line, int days) => IsoDate().Replace(
        line, match => LocalDatePattern.Iso.Format(LocalDatePattern.Iso.Parse(match.Value).Value.PlusDays(days)));

    private static Carried Carry(string text) => FileCarrier.Carry("spring-2026.byre", Encoding.UTF8.GetBytes(text), Next)!;

    [GeneratedRegex(@"\d{4}-\d\d-\d\d")]
    private static partial Regex IsoDate();
}
