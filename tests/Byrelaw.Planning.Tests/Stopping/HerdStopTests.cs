using Byrelaw.Planning.Stopping;

namespace Byrelaw.Planning.Tests.Stopping;

/// <summary>When so many abort that nobody is to be treated.</summary>
public sealed class HerdStopTests
{
    private static readonly LocalDate Today = new(2026, 8, 1);

    [Fact]
    public void Two_abortions_within_thirty_days_stop_a_small_herd() =>
        Of("2026-05-01,1,pregnancy test,pregnant,", "2026-07-03,2,abortion,,", "2026-08-01,1,abortion,,")
            .ShouldNotBeNull().ShouldSatisfyAllConditions(stop => stop.Abortions.ShouldBe([("2", new LocalDate(2026, 7, 3)), ("1", Today)]), stop => stop.InCalf.ShouldBe(1));

    [Theory]
    [InlineData("2026-07-02,2,abortion,,", "2026-08-01,1,abortion,,")]
    [InlineData("2026-08-01,1,abortion,,")]
    public void One_alone_or_one_of_the_31st_day_does_not(params string[] events) => Of(events).ShouldBeNull();

    [Fact]
    public void Of_a_hundred_and_one_in_calf_two_are_too_few_and_of_a_hundred_they_are_enough()
    {
        string[] tests = [.. Enumerable.Range(1, 101).Select(cow => $"2026-05-01,{cow},pregnancy test,pregnant,")];
        string[] abortions = ["2026-07-20,1,abortion,,", "2026-07-21,2,abortion,,"];
        Of([.. tests, .. abortions]).ShouldBeNull();
        Of([.. tests, "2026-06-20,101,calving,,", .. abortions]).ShouldNotBeNull("one of them had calved before these days").InCalf.ShouldBe(100);
    }

    private static HerdStop? Of(params string[] events)
    {
        var farm = new WrittenPlan { More = "event abortion\n", Cows = 120, Events = [.. events] };
        return HerdStop.Of(farm.Herd(farm.Rulebook), Today);
    }
}
