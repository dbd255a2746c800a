namespace Byrelaw.Records.Tests.KnownDays;

public class KnownOnTests
{
    private static Herds.Herd On(string day, params string[] rows) =>
        Read.Herd("date,animal,kind,value,recorded\n" + string.Join('\n', rows), knownOn: day);

    [Fact]
    public void Rows_entered_later_are_not_seen() => Shown.Entries(
        On("2026-03-31", "2026-03-01,1001,heat,,2026-04-02", "2026-03-02,1001,heat,,2026-03-31"), "1001", Words.Heat).ShouldBe("2026-03-02 (3)");

    [Fact]
    public void Without_a_day_of_entry_the_date_counts() => Shown.Entries(
        On("2026-03-31", "2026-03-31,1001,heat,,", "2026-04-01,1001,heat,,"), "1001", Words.Heat).ShouldBe("2026-03-31 (2)");

    [Fact]
    public void What_is_wrong_with_rows_that_are_not_seen_is_not_seen_either()
    {
        var herd = On("2026-03-31", "2026-04-01,9999,foot trim,,", "2026-04-01,1001,heat,x,", "2026-04-01,1001,heat,\"x,", "2026-03-01,1001,heat,,");

        herd.Problems.ShouldBeEmpty();
        herd.Coverage.Gaps.ShouldBeEmpty();
    }

    [Fact]
    public void A_row_whose_day_of_entry_cannot_be_read_was_seen_if_its_date_was_past() =>
        Shown.Gaps(On("2026-03-31", "2026-03-01,1001,heat,,soon", "2026-04-01,1001,calving,,soon"))
            .ShouldBe("not known: 1001, heat, 2026-03-01 (line 2)\n");

    [Fact]
    public void A_row_entered_before_but_dated_after_that_day_is_an_error() =>
        On("2026-03-31", "2026-04-10,1001,heat,,2026-03-01").Problems.Single().Code.ShouldBe("R0123");

    [Fact]
    public void A_row_entered_after_today_is_in_doubt_on_its_own_date()
    {
        var keeping = Words.Keeping(upTo: "2026-04-30", complete: []) with { Today = new NodaTime.LocalDate(2026, 5, 1) };
        var herd = HerdReader.Read(Read.Bytes("animal,born,sex\n1001,2019-08-01,F\n"), Read.Bytes("date,animal,kind,recorded\n2026-03-01,1001,heat,2062-03-02\n"), Words.Vocabulary, keeping, new NodaTime.LocalDate(2026, 4, 10));

        Shown.Entries(herd, "1001", Words.Heat).ShouldBe("");
        var day = Day.Number(new NodaTime.LocalDate(2026, 3, 1));
        herd.Coverage.AnyGap(0, Words.Heat.Id, day, day).ShouldBeTrue();
        herd.Problems.Single().Code.ShouldBe("R0123");
    }

    [Fact]
    public void Births_are_todays()
    {
        var herd = On("2022-03-31", "2026-04-10,1001,heat,,");

        herd.Problems.ShouldBeEmpty("2001 was born after that day, but is on record today");
        Shown.Date(herd.BornEarliest[herd.Find("2001")]).ShouldBe("2022-09-01");
    }
}
