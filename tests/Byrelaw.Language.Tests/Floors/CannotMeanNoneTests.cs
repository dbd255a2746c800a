using Byrelaw.Language.Floors;

namespace Byrelaw.Language.Tests.Floors;

/// <summary>Letters and numbers are their sender's to mean; a text that speaks of a calf, of its age or of a doubt cannot be read as empty.</summary>
public sealed class CannotMeanNoneTests
{
    [Theory]
    [InlineData("PREG")]
    [InlineData("calf")]
    [InlineData("IC")]
    [InlineData("P")]
    [InlineData("in calf")]
    [InlineData("live")]
    [InlineData("early")]
    [InlineData("45d")]
    [InlineData("8 weeks")]
    [InlineData("unsure")]
    [InlineData("not sure")]
    [InlineData("maybe")]
    [InlineData("rechk")]
    [InlineData("?")]
    [InlineData("not empty")]
    [InlineData("")]
    [InlineData("  ")]
    public void It_says_something_else(string text) => CalfWords.CannotMeanNone(text).ShouldBeTrue();

    [Theory]
    [InlineData("E")]
    [InlineData("O")]
    [InlineData("N")]
    [InlineData("0")]
    [InlineData("MT")]
    [InlineData("empty")]
    [InlineData("not in calf")]
    [InlineData("PD-")]
    [InlineData("PD neg")]
    [InlineData("late empty")]
    [InlineData("PD")]
    [InlineData("preg check")]
    [InlineData("X")]
    public void It_may_mean_that_none_was_found(string text) => CalfWords.CannotMeanNone(text).ShouldBeFalse();

    [Theory]
    [InlineData("hand", true)]
    [InlineData("rectal palpation", true)]
    [InlineData("palp.", true)]
    [InlineData("H", true)]
    [InlineData("scan", false)]
    public void Whether_a_hand_felt_is_said_in_words(string text, bool byHand) => CalfWords.ByHand(text).ShouldBe(byHand);
}
