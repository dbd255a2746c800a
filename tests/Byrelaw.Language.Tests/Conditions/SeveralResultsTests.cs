namespace Byrelaw.Language.Tests.Conditions;

/// <summary>Several results together: the last N of them, or every one.</summary>
public sealed class SeveralResultsTests
{
    [Theory]
    [InlineData("average weight of the last 3 results at least 300 kg")]
    [InlineData("lowest weight of the last 2 results in the last 90 days at least 300 kg")]
    [InlineData("highest body condition of the last 4 results since last calving at most 8")]
    [InlineData("every weight of the last 3 results between 300 and 600 kg")]
    [InlineData("every weight in the last 90 days at least 300 kg")]
    [InlineData("every BVD virus of the last 2 results is negative")]
    [InlineData("every BVD virus of the last 2 results in the last 2 years is not positive")]
    [InlineData("every pregnancy test with method hand since last calving is empty")]
    public void A_form_reads_and_prints_as_it_is_written(string written)
    {
        var condition = Rules.Condition(written);
        condition.ShouldBeOfType<SeriesCondition>();
        CanonicalText.Of(condition).ShouldBe(written);
    }

    [Theory]
    [InlineData("average weight of the last 1 results at least 300 kg", "B0338")]
    [InlineData("every BVD virus of the last 1 results is negative", "B0338")]
    [InlineData("latest weight of the last 3 results at least 300 kg", "B0302")]
    [InlineData("average weight of the last 3 animals at least 300 kg", "B0402")]
    [InlineData("every heat in the last 90 days at least 3", "B0205")]
    [InlineData("every BVD virus of the last 2 results at least 3", "B0330")]
    [InlineData("every weight of the last 2 results", "B0304")]
    public void What_is_no_series_is_told(string condition, string code) =>
        Rules.Read(Rules.Words + "define x\n  " + condition + "\n").Problems.Select(problem => problem.Code).ShouldContain(code);

    [Fact]
    public void A_list_of_rules_for_every_list_still_reads() => Rules.Good(Rules.Words + "rules for every list\n");
}
