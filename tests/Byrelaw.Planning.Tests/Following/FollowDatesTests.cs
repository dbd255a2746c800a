using Byrelaw.Planning.Following;

namespace Byrelaw.Planning.Tests.Following;

/// <summary>A transfer on 20 October 2026 of an embryo seven days old, with a gestation of 282 days and a spread of 6: the days that the design's outside checks give.</summary>
public sealed class FollowDatesTests
{
    private static readonly FollowDates Dates = new(new(2026, 10, 20), 7) { Gestation = (282, 6) };

    [Fact]
    public void Every_day_is_counted_from_day_0_the_transfer_less_the_embryos_age()
    {
        Dates.ReturnWatch.ShouldBe(new DateInterval(new(2026, 10, 30), new(2026, 11, 7)));
        Dates.FirstCheck.ShouldBe(new DateInterval(new(2026, 11, 10), new(2026, 11, 17)));
        Dates.ClearedFrom.ShouldBe(new LocalDate(2026, 11, 10));
        Dates.ClearedByHandFrom.ShouldBe(new LocalDate(2026, 12, 1));
        Dates.Due.ShouldBe(new LocalDate(2027, 7, 22));
        Dates.Calving.ShouldBe(new DateInterval(new(2027, 7, 10), new(2027, 8, 3)));
        Dates.DryOff.ShouldBe(new LocalDate(2027, 5, 23));
        Dates.LongFrom.ShouldBe(new LocalDate(2027, 8, 1));
    }

    [Fact]
    public void An_age_that_nobody_knows_counts_as_none_so_that_nobody_is_cleared_too_early()
    {
        var dates = Dates with { Age = null };
        dates.ClearedFrom.ShouldBe(new LocalDate(2026, 11, 17));
        dates.ClearedByHandFrom.ShouldBe(Dates.ClearedByHandFrom);
    }
}
