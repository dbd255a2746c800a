namespace Byrelaw.Records.Tests.Results;

public class AnswerTests
{
    [Theory]
    [InlineData("positive", 0)]
    [InlineData("Negative", 1)]
    [InlineData(" negative ", 1)]
    [InlineData("", KindRun.NotKnown)]
    [InlineData("pending", KindRun.NotKnown)]
    [InlineData("Pending", KindRun.NotKnown)]
    public void An_answer_is_kept_as_its_place_among_the_declared_ones(string cell, byte answer)
    {
        var herd = Read.Events($"2026-03-01,1001,BVD virus,{cell},");

        herd.Problems.ShouldBeEmpty();
        herd.Runs[Words.Virus.Id].Answers.ShouldBe([answer]);
    }

    [Fact]
    public void An_undeclared_answer_is_reported_and_is_a_sample_with_result_not_known()
    {
        var herd = Read.Events("2026-03-01,1001,BVD virus,doubtful,", "2026-03-02,1001,BVD virus,doubtful,");

        herd.Problems.Select(problem => problem.Code).ShouldBe(["R0162", "R0162"]);
        herd.Runs[Words.Virus.Id].Answers.ShouldBe([KindRun.NotKnown, KindRun.NotKnown]);
        herd.Coverage.Gaps.ShouldBeEmpty();
    }
}
