namespace Byrelaw.Reporting.Tests.Words;

public sealed class DatesTests
{
    [Fact]
    public void Dates_are_written_as_people_write_them()
    {
        Dates.Long(new LocalDate(2026, 10, 20)).ShouldBe("20 October 2026");
        Dates.Long(new LocalDate(2026, 10, 20), 2026).ShouldBe("20 October");
        Dates.Short(new LocalDate(2026, 9, 7), 2026).ShouldBe("7 Sep");
        Dates.Short(new LocalDate(2025, 9, 7), 2026).ShouldBe("7 Sep 2025");
    }

    [Theory]
    [InlineData("2026-10-20", "2026-10-20", "20 October 2026")]
    [InlineData("2026-10-20", "2026-10-21", "20 and 21 October 2026")]
    [InlineData("2026-10-20", "2026-10-23", "20 to 23 October 2026")]
    [InlineData("2026-10-31", "2026-11-01", "31 October and 1 November 2026")]
    [InlineData("2026-12-30", "2027-01-02", "30 December 2026 to 2 January 2027")]
    public void A_range_says_each_thing_once(string from, string to, string said) =>
        Dates.Range(NodaTime.Text.LocalDatePattern.Iso.Parse(from).Value, NodaTime.Text.LocalDatePattern.Iso.Parse(to).Value).ShouldBe(said);
}
