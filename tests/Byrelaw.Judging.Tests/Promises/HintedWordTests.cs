using Byrelaw.Judging.Promises;

namespace Byrelaw.Judging.Tests.Promises;

/// <summary>A hinted word is found however farms write it: what is overlooked here may be a service that nobody sees.</summary>
public sealed class HintedWordTests
{
    [Theory]
    [InlineData("AI", "AI")]
    [InlineData("A.I.", "AI")]
    [InlineData("A I", "AI")]
    [InlineData("A-I", "AI")]
    [InlineData("A/I", "AI")]
    [InlineData("AI1", "AI")]
    [InlineData("1AI", "AI")]
    [InlineData("(AI)", "AI")]
    [InlineData("AI'd", "AI")]
    [InlineData("AIs", "AI")]
    [InlineData("second AI", "AI")]
    [InlineData("K.I.", "KI")]
    [InlineData("insem.", "insem")]
    [InlineData("inseminate", "insem")]
    [InlineData("insémination", "insem")]
    [InlineData("ran with the herd", "ran with")]
    public void Is_found(string written, string hint) => HintedWord.StandsIn(written, hint).ShouldBeTrue();

    [Theory]
    [InlineData("hair clipped", "AI")]
    [InlineData("kid", "KI")]
    [InlineData("petted", "ET")]
    [InlineData("laundry", "dry")]
    [InlineData("mating", "AI")]
    public void Is_not_found_inside_another_word(string written, string hint) => HintedWord.StandsIn(written, hint).ShouldBeFalse();
}
