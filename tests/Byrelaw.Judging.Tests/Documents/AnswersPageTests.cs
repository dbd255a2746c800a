namespace Byrelaw.Judging.Tests.Documents;

public sealed class AnswersPageTests
{
    [Fact]
    public void The_small_farm_is_answered_as_the_page_says()
    {
        var farm = new SmallFarm();

        ExecutedPage.Verify("docs/answers.md", farm.Outcome);

        farm.Judged.ShouldBe(3);
    }
}
