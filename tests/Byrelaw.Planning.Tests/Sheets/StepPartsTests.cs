using Byrelaw.Planning.Sheets;

namespace Byrelaw.Planning.Tests.Sheets;

/// <summary>By what she is served and what a donor is given are told apart in one step.</summary>
public sealed class StepPartsTests
{
    private static readonly StepParts Parts = new(new WrittenPlan().Rulebook.Vocabulary);

    [Theory]
    [InlineData("Inseminate", true, false)]
    [InlineData("Inseminate again", true, false)]
    [InlineData("GnRH; inseminate", true, true)]
    [InlineData("FSH", false, true)]
    [InlineData("Flush the embryos", false, true)]
    [InlineData("Look at her; dry off", false, true)]
    public void A_step_serves_gives_or_does_both(string text, bool serves, bool gives)
    {
        var step = new MethodStep(8, null, text, null, [], default);
        (Parts.Serve(step), Parts.Give(step)).ShouldBe((serves, gives));
    }

    [Fact]
    public void A_step_with_a_device_gives_something() =>
        Parts.Give(new MethodStep(8, null, "Inseminate", null, [], default) { Device = DeviceMove.Out }).ShouldBeTrue();
}
