namespace Byrelaw.Judging.Tests.Outside;

/// <summary>
/// Calendar arithmetic against two general libraries: <see cref="DateTime.AddMonths"/> ("if the resulting day is not a valid
/// day in the resulting month, the last valid day of the resulting month is used", .NET API reference) and NodaTime's
/// <see cref="LocalDate.PlusMonths"/>.
/// </summary>
public sealed class CalendarTests
{
    [Fact]
    public void Months_and_years_after_every_day_of_nine_years_are_those_of_DateTime_and_NodaTime()
    {
        var tried = 0;
        for (var day = new DateTime(2019, 1, 1); day.Year < 2028; day = day.AddDays(1))
        {
            var date = LocalDate.FromDateTime(day);
            for (var months = 0; months <= 49; months++)
            {
                var after = new TimeLength(months, TimeUnit.Months).After(date);
                after.ToDateTimeUnspecified().ShouldBe(day.AddMonths(months));
                after.ShouldBe(date.PlusMonths(months));
                tried++;
            }

            for (var years = 0; years <= 12; years++)
            {
                new TimeLength(years, TimeUnit.Years).After(date).ToDateTimeUnspecified().ShouldBe(day.AddYears(years));
            }
        }

        tried.ShouldBe(50 * 3287);
    }

    [Fact]
    public void Days_and_weeks_are_those_of_DateTime()
    {
        for (var day = new DateTime(2023, 12, 1); day < new DateTime(2024, 4, 1); day = day.AddDays(1))
        {
            for (var count = 0; count <= 400; count++)
            {
                var date = LocalDate.FromDateTime(day);
                new TimeLength(count, TimeUnit.Days).After(date).ToDateTimeUnspecified().ShouldBe(day.AddDays(count));
                new TimeLength(count, TimeUnit.Weeks).After(date).ToDateTimeUnspecified().ShouldBe(day.AddDays(7 * count));
            }
        }
    }

    /// <summary>The judge looks backwards from the day of judging; DateTime adds to the calving. Both must meet on the same day.</summary>
    [Theory]
    [InlineData("2024-01-31", 1)]
    [InlineData("2024-01-30", 1)]
    [InlineData("2024-02-29", 12)]
    [InlineData("2023-08-31", 6)]
    [InlineData("2023-12-31", 2)]
    [InlineData("2024-03-31", 1)]
    public void A_calving_is_at_least_and_at_most_so_many_months_ago_on_DateTimes_day(string calved, int months)
    {
        var farm = new WrittenFarm { UpTo = "2025-12-31", Events = [$"{calved},7,calving"] };
        var turns = DateTime.Parse(calved, System.Globalization.CultureInfo.InvariantCulture).AddMonths(months);
        Says("at least", turns.AddDays(-1)).ShouldBe("False");
        Says("at least", turns).ShouldBe("True");
        Says("more than", turns).ShouldBe("False");
        Says("more than", turns.AddDays(1)).ShouldBe("True");
        Says("at most", turns).ShouldBe("True");
        Says("at most", turns.AddDays(1)).ShouldBe("False");
        Says("less than", turns.AddDays(-1)).ShouldBe("True");
        Says("less than", turns).ShouldBe("False");

        string Says(string comparison, DateTime on) =>
            farm.Says($"{comparison} {months} months since last calving", on.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture));
    }
}
