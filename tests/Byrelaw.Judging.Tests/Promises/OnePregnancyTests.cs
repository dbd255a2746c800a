namespace Byrelaw.Judging.Tests.Promises;

/// <summary>Which service is the father of a calf that a scan found: one since her last calving, abortion or empty test, or since what may be one.</summary>
public sealed class OnePregnancyTests
{
    [Theory]
    [InlineData("")]
    [InlineData("2026-04-20,1,heet,", "a word that is spelt like something else ends no pregnancy")]
    [InlineData("2026-03-01,1,weigt,", "nor is it a calving without a father")]
    public void A_service_is_a_father(string row, string because = "") => Farm(row).Fallen().ShouldBe("", because);

    [Theory]
    [InlineData("2026-04-20,1,wonky,", 3)]
    [InlineData("2026-04-20,1,abortoin,", 3)]
    [InlineData("2026-04-20,1,pregnancy test,empty", 0)]
    [InlineData("2026-05-30,1,pregnancy test,empty", 0)]
    public void One_before_what_ended_a_pregnancy_or_may_have_is_none(string row, int butFor)
    {
        var failing = Farm(row).Believe().Doubted.OfType<ExpectationFails>().Single(fails => fails.Expectation.IsOfOnePregnancy).Failing.ShouldHaveSingleItem();
        (failing.Day, failing.ButFor).ShouldBe((Day.Number(new LocalDate(2026, 6, 1)), butFor));
    }

    [Fact]
    public void Where_there_is_no_service_at_all_no_row_is_to_blame() =>
        Farm("2026-04-20,1,wonky,", service: "2025-01-01,1,lameness,").Believe().Doubted.OfType<ExpectationFails>().Single(fails => fails.Expectation.IsOfOnePregnancy).Failing.ShouldHaveSingleItem().ButFor.ShouldBe(0);

    private static PromisingFarm Farm(string row, string service = "2026-03-01,1,mating,") => new()
    {
        Animals = ["1,2022-01-01,F"],
        Events = [service, .. row.Length == 0 ? Array.Empty<string>() : [row], "2026-06-01,1,pregnancy test,pregnant"],
        Records = "up to 2026-10-04\ncomplete for mating, transfer, bull in, bull out since 2020-01-01",
    };
}
