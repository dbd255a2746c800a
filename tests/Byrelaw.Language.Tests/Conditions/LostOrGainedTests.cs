namespace Byrelaw.Language.Tests.Conditions;

/// <summary><c>lost at most 0.5</c> and <c>gained at least 20 kg</c>: the change of a measured value, as people say it.</summary>
public sealed class LostOrGainedTests
{
    [Theory]
    [InlineData("lost at most 0.5 body condition since last calving", "change in body condition since last calving at least -0.5")]
    [InlineData("lost less than 0.5 body condition since last calving", "change in body condition since last calving more than -0.5")]
    [InlineData("lost at least 0.5 body condition since last calving", "change in body condition since last calving at most -0.5")]
    [InlineData("lost more than 0.5 body condition since last calving", "change in body condition since last calving less than -0.5")]
    [InlineData("gained at least 20 kg weight in the last 90 days", "change in weight in the last 90 days at least 20 kg")]
    [InlineData("gained more than 20 kg weight in the last 90 days", "change in weight in the last 90 days more than 20 kg")]
    [InlineData("gained at most 20 kg weight in the last 90 days", "change in weight in the last 90 days at most 20 kg")]
    [InlineData("gained less than 20 kg weight in the last 90 days", "change in weight in the last 90 days less than 20 kg")]
    [InlineData("lost at most 0 body condition since last calving", "change in body condition since last calving at least 0")]
    [InlineData("gained at most 0 body condition since last calving", "change in body condition since last calving at most 0")]
    [InlineData("gained at least 44 lb weight in the last 90 days", "change in weight in the last 90 days at least 44 lb")]
    public void Both_mean_the_same_and_are_printed_the_one_way(string said, string change)
    {
        var text = CanonicalText.Of(Rules.Condition(said));
        CanonicalText.Of(Rules.Condition(change)).ShouldBe(text);
        CanonicalText.Of(Rules.Condition(text)).ShouldBe(text);
        (text.StartsWith("lost ", StringComparison.Ordinal) || text.StartsWith("gained ", StringComparison.Ordinal)).ShouldBeTrue(text);
    }

    [Theory]
    [InlineData("change in body condition since last calving between -1 and 1")]
    [InlineData("change in body condition since last calving exactly 1")]
    public void What_has_two_limits_stays_a_change(string change) => CanonicalText.Of(Rules.Condition(change)).ShouldBe(change);

    [Theory]
    [InlineData("lost at most -0.5 body condition since last calving", "B0337")]
    [InlineData("gained at least -0.5 body condition since last calving", "B0337")]
    [InlineData("lost at most 0.5 heat since last calving", "B0402")]
    [InlineData("lost at most 20 body condition since last calving", "B0311")]
    [InlineData("lost between 1 and 2 body condition since last calving", "B0402")]
    [InlineData("lost at most 0.5 body condition of her mob since last calving", "B0319")]
    public void What_cannot_be_lost_is_told(string condition, string code) =>
        Rules.Read(Rules.Words + "define x\n  " + condition + "\n").Problems.Select(problem => problem.Code).ShouldContain(code);
}
