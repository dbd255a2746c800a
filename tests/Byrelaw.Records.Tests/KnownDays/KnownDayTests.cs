namespace Byrelaw.Records.Tests.KnownDays;

public class KnownDayTests
{
    private const string Events = """
        date,animal,kind,recorded
        2026-03-01,1001,heat,2026-03-05
        2026-03-10,1001,heat,
        2026-03-02,1002,heat,2026-03-08
        """;

    [Fact]
    public void It_is_what_the_farm_says() =>
        Read.Herd(Events, keeping: Words.Keeping("2026-09-20")).KnownDay.ShouldBe(Words.Date("2026-09-20"));

    [Fact]
    public void Else_the_day_that_is_asked_about() =>
        Read.Herd(Events, knownOn: "2026-03-31").KnownDay.ShouldBe(Words.Date("2026-03-31"));

    [Theory]
    [InlineData("2026-09-20", "2026-10-01", "2026-09-20")]
    [InlineData("2026-09-20", "2026-09-01", "2026-09-01")]
    public void Of_both_it_is_the_earlier(string upTo, string knownOn, string earlier) =>
        Read.Herd(Events, keeping: Words.Keeping(upTo), knownOn: knownOn).KnownDay.ShouldBe(Words.Date(earlier));

    [Fact]
    public void Else_the_latest_day_on_which_a_row_was_entered() =>
        Read.Herd("date,animal,kind,recorded\n2026-03-01,1001,heat,2026-03-05\n").KnownDay.ShouldBe(Words.Date("2026-03-05"));

    [Fact]
    public void A_row_without_a_day_of_entry_was_entered_on_its_date() =>
        Read.Herd(Events).KnownDay.ShouldBe(Words.Date("2026-03-10"));

    [Fact]
    public void Without_events_it_is_the_latest_birth() =>
        Read.Herd("date,animal,kind\n").KnownDay.ShouldBe(Words.Date("2022-09-01"));

    [Fact]
    public void An_unreadable_date_does_not_move_it() =>
        Read.Herd("date,animal,kind\n2026-03-10,1001,heat\n2027-02-30,1001,heat\n").KnownDay.ShouldBe(Words.Date("2026-03-10"));
}
